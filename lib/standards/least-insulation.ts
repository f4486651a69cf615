import { insulationMinimum } from './tables/insulation-minimum';

export const INSULATION_CITE = 'IEEE 43-2013 table 3';

/** Least insulation resistance in MΩ (one minute, 40 °C) for a winding of these rated volts. */
export function leastInsulationMohm(volts: number): number | null {
  const row = insulationMinimum.rows.find(({ belowVolts }) => belowVolts === null || volts < belowVolts);
  return row?.megohm ?? null;
}
