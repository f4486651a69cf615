import type { Motor } from '@/lib/plant/motor';

/** What is asked of a motor besides its rating that its price hangs on. */
export const BUILDS = ['plain', 'washdown', 'area', 'brake'] as const;
export type Build = (typeof BUILDS)[number];

/** A standard rating as a price list names it: hp and poles of NEMA, kW and poles of IEC, and how it is built. */
export interface RatingKey {
  system: 'NEMA' | 'IEC';
  /** hp of NEMA, kW of IEC, as the standard prints it. */
  power: number;
  poles: number;
  build: Build;
}

/** A motor that could be held: one that is there already, or one that could be bought. */
export interface HoldCandidate {
  from: 'shelf' | 'buy';
  /** What is judged; of several alike on the shelf the first that needs no test. */
  motor: Motor;
  /** Plant numbers of those alike that are there already; empty: it would be bought. */
  numbers: readonly string[];
  /** Its place in a price list; null: it is there already, or no list can name it. */
  rating: RatingKey | null;
  /** Tags of the sets for which it would be asked so; empty: it is there already. */
  askedFor: readonly string[];
}

/** What the site has told of a rating: the price of one, in its currency, and the days until it is there. */
export interface Offered {
  price: number | null;
  leadDays: number | null;
}
