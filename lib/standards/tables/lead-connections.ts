import type { Status } from '../dimension';

/** Which leads of a three-phase winding go to which line, and which are joined, by their NEMA numbers. */
export const leadConnections = {
  source: {
    standard: 'NEMA MG 1 2.20 and following, terminal markings',
    clause: 'three-phase motors, single speed: 6, 9 and 12 leads',
    read: "a trade association's engineering handbook, terminal markings and connections",
    second: "two motor shops' tables of NEMA connections (one of them misprints the high voltage of nine leads in star)",
  },
  unit: 'lead numbers',
  columns: {
    winding: 'as the register names it',
    link: 'how its coils are linked at this voltage',
    lines: 'the leads on L1, L2 and L3',
    joined: 'groups of leads joined to each other and to no line',
  },
  rows: [
    { winding: 'star-delta-6', link: 'star', lines: [[1], [2], [3]], joined: [[4, 5, 6]], status: 'published-2' },
    { winding: 'star-delta-6', link: 'delta', lines: [[1, 6], [2, 4], [3, 5]], joined: [], status: 'published-2' },
    { winding: 'star-9', link: 'series-star', lines: [[1], [2], [3]], joined: [[4, 7], [5, 8], [6, 9]], status: 'published-2' },
    { winding: 'star-9', link: 'parallel-star', lines: [[1, 7], [2, 8], [3, 9]], joined: [[4, 5, 6]], status: 'published-2' },
    { winding: 'delta-9', link: 'series-delta', lines: [[1], [2], [3]], joined: [[4, 7], [5, 8], [6, 9]], status: 'published-2' },
    { winding: 'delta-9', link: 'parallel-delta', lines: [[1, 6, 7], [2, 4, 8], [3, 5, 9]], joined: [], status: 'published-2' },
    { winding: 'star-delta-12', link: 'series-star', lines: [[1], [2], [3]], joined: [[4, 7], [5, 8], [6, 9], [10, 11, 12]], status: 'published-2' },
    { winding: 'star-delta-12', link: 'series-delta', lines: [[1, 12], [2, 10], [3, 11]], joined: [[4, 7], [5, 8], [6, 9]], status: 'published-2' },
    { winding: 'star-delta-12', link: 'parallel-star', lines: [[1, 7], [2, 8], [3, 9]], joined: [[4, 5, 6], [10, 11, 12]], status: 'published-2' },
    { winding: 'star-delta-12', link: 'parallel-delta', lines: [[1, 6, 7, 12], [2, 4, 8, 10], [3, 5, 9, 11]], joined: [], status: 'published-2' },
    { winding: 'part-winding-6', link: 'parallel', lines: [[1, 7], [2, 8], [3, 9]], joined: [], status: 'memory' },
  ],
  notes: [
    'Part-winding, six leads: the tables print that the leads are 1, 2, 3 (first half) and 7, 8, 9 (second half). That both halves lie on the same lines once running is from memory.',
  ],
} as const satisfies {
  rows: readonly {
    winding: string;
    link: string;
    lines: readonly [readonly number[], readonly number[], readonly number[]];
    joined: readonly (readonly number[])[];
    status: Status;
  }[];
  [part: string]: unknown;
};
