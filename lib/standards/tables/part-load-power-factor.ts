import type { Cell, Table } from '../table';

/** `pf`: at full, three quarters and half load; null where the text prints nothing. */
export interface PartLoadPowerFactorRow {
  what: string;
  ratedKw: number | null;
  pf: readonly [full: Cell | null, threeQuarters: Cell | null, half: Cell | null];
}

export const partLoadPowerFactor: Table<PartLoadPowerFactorRow> = {
  source: {
    standard: 'none: no standard fixes the power factor of a motor at part load',
    edition: 'read 2026',
    clause: 'average by load from a text of the trade; three public data sheets beside it',
    texts: {
      'PF-FORUM': 'Average power factor by load: 0.75 at half, 0.85 at three quarters, 0.90 at full (vendor-run forum page)',
      'DS-SET': 'Public motor data sheets with part-load efficiency and power factor (makers withheld)',
    },
  },
  unit: 'per unit',
  columns: { what: 'the motor', ratedKw: 'rated power', pf: 'at full, three quarters and half of rated load' },
  rows: [
    { what: 'average', ratedKw: null, pf: [[0.9, 1, 'PF-FORUM'], [0.85, 1, 'PF-FORUM'], [0.75, 1, 'PF-FORUM']] },
    { what: '22 kW, 4-pole, IE1', ratedKw: 22, pf: [[0.9, 1, 'DS-SET'], [0.87, 1, 'DS-SET'], [0.79, 1, 'DS-SET']] },
    { what: '3 hp, stainless washdown', ratedKw: 2.238, pf: [[0.87, 1, 'DS-SET'], [0.82, 1, 'DS-SET'], [0.72, 1, 'DS-SET']] },
    { what: '1.5 hp, washdown or C-face', ratedKw: 1.119, pf: [[0.73, 1, 'DS-SET'], [0.68, 1, 'DS-SET'], [0.58, 1, 'DS-SET']] },
  ],
  notes: ['The tables by horsepower and load of the DOE were not readable: these points show the shape only.'],
};

/** Without load: an open textbook (Kuphaldt, Lessons in Electric Circuits), read in one text. */
export const NO_LOAD_POWER_FACTOR: Cell = [0.1, 1, 'PF-KUP'];
