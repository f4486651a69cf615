import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { nominalVoltage } from '@/lib/standards/nominal-voltage';

/** What the motor of a set is fed with: on a drive its output, and its input where the output is not told. */
export interface Fed {
  isOnDrive: boolean;
  phases: 1 | 3 | null;
  volts: number | null;
  hertz: number | null;
  /** The fields that tell them. */
  fields: { volts: string; hertz: string };
}

export function fedOf({ supply }: PumpSet): Fed {
  const { drive } = supply;
  if (supply.start !== 'drive') {
    const fields = { volts: 'supply.volts', hertz: 'supply.hertz' };
    return { isOnDrive: false, phases: supply.phases, volts: supply.volts, hertz: supply.hertz, fields };
  }
  return {
    isOnDrive: true,
    phases: 3,
    volts: drive?.outputVolts ?? supply.volts,
    hertz: drive?.baseHertz ?? supply.hertz,
    fields: {
      volts: drive?.outputVolts == null ? 'supply.volts' : 'supply.drive.outputVolts',
      hertz: drive?.baseHertz == null ? 'supply.hertz' : 'supply.drive.baseHertz',
    },
  };
}

/** How far the supply is from a row's volts, per unit: + above, − below, 0 within a printed range. Null: not known. */
export function voltsOff({ volts, voltsMin, voltsMax }: Rating, supply: number): number | null {
  const least = voltsMin ?? volts ?? voltsMax;
  const most = voltsMax ?? volts ?? voltsMin;
  if (least === null || most === null) return null;
  if (supply < least) return supply / least - 1;
  return supply > most ? supply / most - 1 : 0;
}

/** The row of a plate for the supply's hertz that is nearest its volts, the plate's usual shortfall allowed for. */
export function rowAtSupply(set: PumpSet, motor: Motor): { row: Rating; off: number } | null {
  const { volts, hertz } = fedOf(set);
  if (volts === null || hertz === null) return null;
  const usual = nominalVoltage(volts)?.plateVolts ?? volts;
  const rows = motor.ratings.flatMap((row) => {
    const [a, b] = [voltsOff(row, volts), voltsOff(row, usual)];
    return row.hertz !== hertz || a === null || b === null ? [] : [{ row, off: Math.abs(a) < Math.abs(b) ? a : b }];
  });
  const [nearest] = rows.sort((a, b) => Math.abs(a.off) - Math.abs(b.off));
  return nearest ?? null;
}

/** The row that serves at the supply: within a tenth of its volts. */
export function servingRow(set: PumpSet, motor: Motor): Rating | null {
  const nearest = rowAtSupply(set, motor);
  return nearest !== null && Math.abs(nearest.off) <= SERVES ? nearest.row : null;
}

/** A plate holds for a tenth above and below its volts: NEMA MG 1-12.44. */
export const SERVES = 0.1;
