import { citeOf } from './table';
import { nominalVoltages } from './tables/nominal-voltages';

/** Volts on the plate of the motors built for a system, and where that is read. */
export interface PlateForSystem {
  plateVolts: number;
  cite: string;
}

/**
 * The plate that belongs to a nominal system by design: 460 V to 480 V. Null for systems whose motors carry the
 * system's own voltage (400 V) or that are not printed.
 */
export const nominalVoltage = (systemVolts: number): PlateForSystem | null => PLATES.get(systemVolts) ?? null;

const PLATES: ReadonlyMap<number, PlateForSystem> = new Map(
  nominalVoltages.rows.map(({ system, plate }) => [
    system,
    { plateVolts: plate[0], cite: citeOf(nominalVoltages.source.clause, plate[1]) },
  ]),
);
