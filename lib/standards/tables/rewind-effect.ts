/** What a rewind does to a motor's efficiency, measured before and after, or said of shops that nobody manages. */
export const rewindEffect = {
  source: {
    standard: 'EASA/AEMT rewind studies of 2003 and 2019 (published 2020), as reported in the trade press',
    read: 'each study in one text; the others are guidance of the trade and of a utility, each in one text',
    texts: {
      'RW-2003': 'Trade magazine, 2008, citing the 2003 study: within 0.2',
      'RW-2020': 'Trade magazine, 2020: +0.3 to −0.5, mean −0.1, ten motors of 40 to 100 hp',
      'VENDOR-RW-1': 'Support article: each rewind costs about 1 % of the efficiency before (vendor, name withheld)',
      'RW-UTIL': 'Utility guidance: repairs may cost up to 2 %',
    },
  },
  unit: 'points of efficiency',
  columns: { id: 'study or guidance', fromPts: 'greatest loss', toPts: 'greatest gain', meanPts: 'mean' },
  rows: [
    { id: 'study-2003', fromPts: -0.2, toPts: 0.2, meanPts: null, status: 'published', src: 'RW-2003' },
    { id: 'study-2020', fromPts: -0.5, toPts: 0.3, meanPts: -0.1, status: 'published', src: 'RW-2020' },
    { id: 'unmanaged', fromPts: -1, toPts: -1, meanPts: null, status: 'published', src: 'VENDOR-RW-1' },
    { id: 'poor', fromPts: -2, toPts: 0, meanPts: null, status: 'published', src: 'RW-UTIL' },
  ],
  notes: ['The studies are of rewinds by good practice. Without knowing the shop, a loss of 0.5 to 1 is allowed for: common practice.'],
} as const;

const STUDIES = rewindEffect.rows.filter(({ id }) => id === 'study-2003' || id === 'study-2020');

/** What both studies together leave open, in points of efficiency: good practice only. */
export const REWIND_BY_GOOD_PRACTICE = {
  fromPts: Math.min(...STUDIES.map(({ fromPts }) => fromPts)),
  toPts: Math.max(...STUDIES.map(({ toPts }) => toPts)),
  cite: 'rewinds by good practice: EASA/AEMT studies of 2003 (within 0.2 points) and 2020 (−0.5 to +0.3, ten motors of 40 to 100 hp), each read in one text of the trade press',
} as const;
