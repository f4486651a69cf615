import type { Status } from '../dimension';

/** Greatest misalignment of two shafts at a short flexible coupling, by speed. */
export const alignmentTolerance = {
  source: {
    standard: 'common practice: no standard is quoted',
    clause: 'suggested shaft alignment tolerances, short flexible couplings, column "acceptable"',
    read: "an alignment instrument maker's manual",
    second: "the same table on an alignment service's sheet",
  },
  unit: 'mm',
  columns: {
    rpm: 'the speed the row is printed for',
    offsetMm: 'offset at the coupling',
    gapMmPer100: 'difference of the gap at the coupling edge, for each 100 mm of coupling diameter',
  },
  rows: [
    { rpm: 750, offsetMm: 0.19, gapMmPer100: 0.13, status: 'published-2' },
    { rpm: 1500, offsetMm: 0.09, gapMmPer100: 0.07, status: 'published-2' },
    { rpm: 3000, offsetMm: 0.06, gapMmPer100: 0.04, status: 'published-2' },
    { rpm: 6000, offsetMm: 0.03, gapMmPer100: 0.02, status: 'published-2' },
  ],
  softFootMm: 0.06,
  notes: [
    'Soft foot: 0.06 mm at any speed, printed in the same table (2.0 mils beside it).',
    'The inch columns of the table are printed for 900, 1800, 3600 and 7200 rpm and are not converted here.',
    'Where the maker of a coupling or a machine asks for less, that holds.',
  ],
} satisfies {
  rows: readonly { rpm: number; offsetMm: number; gapMmPer100: number; status: Status }[];
  [part: string]: unknown;
};
