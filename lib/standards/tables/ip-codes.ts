import type { Status } from '../dimension';

/** What the numerals of an IP code keep out, and which lower numerals each includes. */
export const ipCodes = {
  source: {
    standard: 'IEC 60529 (Ed. 2.2), tables 1 to 3 and clause 6; K letters: ISO 20653',
    clause: 'clause 6: marking; 7 or 8 alone is unsuitable for jets unless marked beside 5 or 6',
    read: "a test-equipment maker's page quoting the rule up to 6; an encyclopaedia text; two trade tables",
    second: 'the tables agree; 9 and the reach of 7 and 8 below 5 are from memory',
  },
  unit: 'numeral',
  columns: { n: 'numeral', keepsOut: 'what it keeps out', includes: 'lower numerals it includes', status: 'how known' },
  solids: [
    { n: 0, keepsOut: 'nothing', includes: [], status: 'memory' },
    { n: 1, keepsOut: '50 mm and larger; back of the hand', includes: [0], status: 'published' },
    { n: 2, keepsOut: '12.5 mm; finger', includes: [0, 1], status: 'published' },
    { n: 3, keepsOut: '2.5 mm; tool', includes: [0, 1, 2], status: 'published' },
    { n: 4, keepsOut: '1 mm; wire', includes: [0, 1, 2, 3], status: 'published' },
    { n: 5, keepsOut: 'dust-protected: some dust, no harm', includes: [0, 1, 2, 3, 4], status: 'published' },
    { n: 6, keepsOut: 'dust-tight', includes: [0, 1, 2, 3, 4, 5], status: 'published' },
  ],
  /** `unsuitableFor`: numerals that clause 6 says the mark alone does not serve; the rest is not stated. */
  water: [
    { n: 0, keepsOut: 'nothing', includes: [], unsuitableFor: [], status: 'memory' },
    { n: 1, keepsOut: 'drops falling straight', includes: [0], unsuitableFor: [], status: 'published-2' },
    { n: 2, keepsOut: 'drops, case tilted 15 degrees', includes: [0, 1], unsuitableFor: [], status: 'published-2' },
    { n: 3, keepsOut: 'spray to 60 degrees', includes: [0, 1, 2], unsuitableFor: [], status: 'published-2' },
    { n: 4, keepsOut: 'splash from all sides', includes: [0, 1, 2, 3], unsuitableFor: [], status: 'published-2' },
    { n: 5, keepsOut: 'jets', includes: [0, 1, 2, 3, 4], unsuitableFor: [], status: 'published-2' },
    { n: 6, keepsOut: 'strong jets', includes: [0, 1, 2, 3, 4, 5], unsuitableFor: [], status: 'published-2' },
    { n: 7, keepsOut: 'immersion, 1 m for 30 min', includes: [0], unsuitableFor: [5, 6], status: 'published-2' },
    { n: 8, keepsOut: 'longer or deeper immersion', includes: [0, 7], unsuitableFor: [5, 6], status: 'published-2' },
    { n: 9, keepsOut: 'hot high-pressure jets close up', includes: [0], unsuitableFor: [5, 6, 7, 8], status: 'memory' },
  ],
  notes: [
    'X means not stated: never zero protection and never enough.',
    'That 8 includes 7 is from memory.',
    'IEC 60034-5 uses the same numerals for rotating machines; S, M and W letters are not told apart here.',
  ],
} satisfies {
  solids: readonly IpNumeral[];
  water: readonly (IpNumeral & { unsuitableFor: readonly number[] })[];
  [part: string]: unknown;
};

interface IpNumeral {
  n: number;
  keepsOut: string;
  includes: readonly number[];
  status: Status;
}
