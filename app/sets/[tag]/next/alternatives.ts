import type { Alternatives } from '@/lib/energy/next-failure/next-failure';
import type { Ranked } from '@/lib/matching/offer/ranked';
import type { Assumed } from './assumptions';

/** So many of the shelf, and so many ratings to buy, are set side by side: the best of each. */
const SHELF_SHOWN = 3;
const RATINGS_SHOWN = 2;

/** The best of what could go in, as the judgement ranks it, with the prices assumed. */
export const alternativesOf = (
  { fits }: Pick<Ranked, 'fits'>,
  { prices, repairPrice, shelfPrice }: Pick<Assumed, 'prices' | 'repairPrice' | 'shelfPrice'>,
): Alternatives => ({
  onShelf: fits.shelf
    .slice(0, SHELF_SHOWN)
    .map(({ candidate, result }) => ({ motor: candidate.motor, hours: result.hours, price: shelfPrice })),
  toBuy: fits.buy
    .slice(0, RATINGS_SHOWN)
    .map(({ candidate, result }) => ({ motor: candidate.motor, hours: result.hours, prices })),
  repairPrice,
});
