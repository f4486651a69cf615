import type { Cell } from './table';
import { isoShaftFits } from './tables/iso-shaft-fits';

export interface ShaftFit {
  /** mm above and below nominal; `minus` is negative where the lower limit lies above nominal. */
  plus: number;
  minus: number;
  texts: Cell[1];
}

/** Deviations of an ISO shaft class at a diameter (ISO 286-2); null outside the table. */
export function shaftFit(fit: string, diameterMm: number): ShaftFit | null {
  const row = isoShaftFits.rows.find((one) => one.fit === fit && diameterMm > one.over && diameterMm <= one.to);
  if (!row) return null;
  const [[upper, lower], texts] = row.deviations;
  return { plus: upper / 1000, minus: -lower / 1000, texts };
}
