import type { Status } from '../dimension';

/** Smallest V-belt sheave on a general-purpose T-frame motor, by frame and rating. */
export const minimumSheaves = {
  source: {
    standard: 'NEMA MG 1',
    clause: '14.42 (14.7 in newer editions)',
    read: "a belt maker's data sheet citing the clause (frames 143T to 404T)",
    second: "a fan maker's data sheet citing the clause (frames 143T to 254T)",
  },
  unit: 'in',
  columns: {
    frame: 'T frame',
    hp3600: 'ratings at 3600 rpm synchronous, hp: one, or the ends of a range; null where the clause has none',
    hp1800: 'as before, at 1800 rpm',
    hp1200: 'as before, at 1200 rpm',
    hp900: 'as before, at 900 rpm',
    pitchIn: 'least pitch diameter, A to E sections',
    narrowOutsideIn: 'least outside diameter, 3V, 5V and 8V sections',
    status: 'how known',
  },
  rows: [
    { frame: '143T', hp3600: [1.5], hp1800: [1], hp1200: [0.75], hp900: [0.5], pitchIn: 2.2, narrowOutsideIn: 2.2, status: 'published-2' },
    { frame: '145T', hp3600: [2, 3], hp1800: [1.5, 2], hp1200: [1], hp900: [0.75], pitchIn: 2.4, narrowOutsideIn: 2.4, status: 'published-2' },
    { frame: '182T', hp3600: [3], hp1800: [3], hp1200: [1.5], hp900: [1], pitchIn: 2.4, narrowOutsideIn: 2.4, status: 'published-2' },
    { frame: '182T', hp3600: [5], hp1800: null, hp1200: null, hp900: null, pitchIn: 2.6, narrowOutsideIn: 2.4, status: 'published-2' },
    { frame: '184T', hp3600: null, hp1800: null, hp1200: [2], hp900: [1.5], pitchIn: 2.4, narrowOutsideIn: 2.4, status: 'published-2' },
    { frame: '184T', hp3600: [5], hp1800: null, hp1200: null, hp900: null, pitchIn: 2.6, narrowOutsideIn: 2.4, status: 'published-2' },
    { frame: '184T', hp3600: [7.5], hp1800: [5], hp1200: null, hp900: null, pitchIn: 3.0, narrowOutsideIn: 3.0, status: 'published-2' },
    { frame: '213T', hp3600: [7.5, 10], hp1800: [7.5], hp1200: [3], hp900: [2], pitchIn: 3.0, narrowOutsideIn: 3.0, status: 'published-2' },
    { frame: '215T', hp3600: [10], hp1800: null, hp1200: [5], hp900: [3], pitchIn: 3.0, narrowOutsideIn: 3.0, status: 'published-2' },
    { frame: '215T', hp3600: [15], hp1800: [10], hp1200: null, hp900: null, pitchIn: 3.8, narrowOutsideIn: 3.8, status: 'published-2' },
    { frame: '254T', hp3600: [15], hp1800: null, hp1200: [7.5], hp900: [5], pitchIn: 3.8, narrowOutsideIn: 3.8, status: 'published-2' },
    { frame: '254T', hp3600: [20], hp1800: [15], hp1200: null, hp900: null, pitchIn: 4.4, narrowOutsideIn: 4.4, status: 'published' },
    { frame: '256T', hp3600: [20, 25], hp1800: null, hp1200: [10], hp900: [7.5], pitchIn: 4.4, narrowOutsideIn: 4.4, status: 'published' },
    { frame: '256T', hp3600: null, hp1800: [20], hp1200: null, hp900: null, pitchIn: 4.6, narrowOutsideIn: 4.4, status: 'published' },
    { frame: '284T', hp3600: null, hp1800: null, hp1200: [15], hp900: [10], pitchIn: 4.6, narrowOutsideIn: 4.4, status: 'published' },
    { frame: '284T', hp3600: null, hp1800: [25], hp1200: null, hp900: null, pitchIn: 5.0, narrowOutsideIn: 4.4, status: 'published' },
    { frame: '286T', hp3600: null, hp1800: [30], hp1200: [20], hp900: [15], pitchIn: 5.4, narrowOutsideIn: 5.2, status: 'published' },
    { frame: '324T', hp3600: null, hp1800: [40], hp1200: [25], hp900: [20], pitchIn: 6.0, narrowOutsideIn: 6.0, status: 'published' },
    { frame: '326T', hp3600: null, hp1800: [50], hp1200: [30], hp900: [25], pitchIn: 6.8, narrowOutsideIn: 6.8, status: 'published' },
    { frame: '364T', hp3600: null, hp1800: null, hp1200: [40], hp900: [30], pitchIn: 6.8, narrowOutsideIn: 6.8, status: 'published' },
    { frame: '364T', hp3600: null, hp1800: [60], hp1200: null, hp900: null, pitchIn: 7.4, narrowOutsideIn: 7.4, status: 'published' },
    { frame: '365T', hp3600: null, hp1800: null, hp1200: [50], hp900: [40], pitchIn: 8.2, narrowOutsideIn: 8.2, status: 'published' },
    { frame: '365T', hp3600: null, hp1800: [75], hp1200: null, hp900: null, pitchIn: 9.0, narrowOutsideIn: 8.6, status: 'published' },
    { frame: '404T', hp3600: null, hp1800: null, hp1200: [60], hp900: null, pitchIn: 9.0, narrowOutsideIn: 8.0, status: 'published' },
    { frame: '404T', hp3600: null, hp1800: null, hp1200: null, hp900: [50], pitchIn: 9.0, narrowOutsideIn: 8.4, status: 'published' },
    { frame: '404T', hp3600: null, hp1800: [100], hp1200: null, hp900: null, pitchIn: 10.0, narrowOutsideIn: 8.6, status: 'published' },
  ],
  notes: ['Not for short-shaft (TS) frames: those are not for belts.', 'IEC sets no such table: the maker states a radial load.'],
} satisfies { rows: readonly SheaveRow[]; [part: string]: unknown };

export interface SheaveRow {
  frame: string;
  hp3600: readonly number[] | null;
  hp1800: readonly number[] | null;
  hp1200: readonly number[] | null;
  hp900: readonly number[] | null;
  pitchIn: number;
  narrowOutsideIn: number;
  status: Status;
}
