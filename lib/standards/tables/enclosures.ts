import type { Status } from '../dimension';

/** Enclosure words stamped on motors, with the least IP degree each is taken to promise. */
export const enclosures = {
  source: {
    standard: 'NEMA MG 1 parts 1 and 5 (the words); IEC 60034-5 (the degrees); IEC 60034-6 (cooling)',
    clause: 'MG 1-1.25 to 1.27',
    read: "a motor maker's metric primer setting open drip-proof beside IP22 and totally enclosed beside IP54",
    second: 'a trade page on cooling codes agrees on how each is cooled',
  },
  unit: 'IP code',
  columns: {
    word: 'as stamped, capitals, no blanks',
    long: 'the words in full',
    atLeast: 'the least degree the word promises; a plate with an IP code says more',
    closed: 'true where no outside air passes through the motor',
    airFrom: 'what cools it: own shaft, surface alone, a blower with its own feed, or the machine it stands in',
    status: 'how the degree is known',
  },
  rows: [
    { word: 'ODP', long: 'open drip-proof', atLeast: 'IP22', closed: false, airFrom: 'shaft', status: 'published' },
    { word: 'DP', long: 'open drip-proof', atLeast: 'IP22', closed: false, airFrom: 'shaft', status: 'memory' },
    { word: 'WPI', long: 'weather-protected I', atLeast: 'IP23', closed: false, airFrom: 'shaft', status: 'memory' },
    { word: 'WPII', long: 'weather-protected II', atLeast: 'IP24', closed: false, airFrom: 'shaft', status: 'memory' },
    { word: 'TEFC', long: 'totally enclosed, fan-cooled', atLeast: 'IP54', closed: true, airFrom: 'shaft', status: 'published' },
    { word: 'TENV', long: 'totally enclosed, not ventilated', atLeast: 'IP54', closed: true, airFrom: 'surface', status: 'published' },
    { word: 'TEAO', long: 'totally enclosed, air over', atLeast: 'IP54', closed: true, airFrom: 'machine', status: 'published' },
    { word: 'TEBC', long: 'totally enclosed, blower-cooled', atLeast: 'IP54', closed: true, airFrom: 'blower', status: 'published' },
    { word: 'XP', long: 'explosion-proof', atLeast: 'IP54', closed: true, airFrom: 'shaft', status: 'memory' },
    { word: 'TEXP', long: 'explosion-proof', atLeast: 'IP54', closed: true, airFrom: 'shaft', status: 'memory' },
    { word: 'XPFC', long: 'explosion-proof, fan-cooled', atLeast: 'IP54', closed: true, airFrom: 'shaft', status: 'memory' },
    { word: 'XPNV', long: 'explosion-proof, not ventilated', atLeast: 'IP54', closed: true, airFrom: 'surface', status: 'memory' },
  ],
  notes: [
    'A word names a build, an IP code a test: the pairs are nearest meanings and are never turned into each other.',
    'An explosion-proof word is no area mark: class, division, group and temperature code are read from the plate.',
  ],
} satisfies { rows: readonly EnclosureRow[]; [part: string]: unknown };

export interface EnclosureRow {
  word: string;
  long: string;
  atLeast: string;
  closed: boolean;
  airFrom: 'shaft' | 'surface' | 'blower' | 'machine';
  status: Status;
}
