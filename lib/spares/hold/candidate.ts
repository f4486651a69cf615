import type { Motor } from '@/lib/plant/motor';
import type { Priced } from './price-of';

/** A motor that could be held: one that is there already, or one that could be bought. */
export interface HoldCandidate {
  from: 'shelf' | 'buy';
  /** What is judged; of several alike on the shelf the first that needs no test. */
  motor: Motor;
  /** Plant numbers of those alike that are there already; empty: it would be bought. */
  numbers: readonly string[];
  /** Tags of the sets for which it would be asked so; empty: it is there already. */
  askedFor: readonly string[];
}

/** What was told of a rating: the price of one, in the site's currency, and the days until it is there. Null: nothing. */
export interface Offered {
  price: Priced | null;
  leadDays: number | null;
}
