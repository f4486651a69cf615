import { customaryPair } from '@/lib/standards/customary-pair';

/** Powers written short (18.6 kW for 25 hp): common practice, no source. */
const WRITTEN_SHORT = 0.995;

/**
 * Whether two rated powers count as equal in the trade, and stay so as derated. `deratedRatio`: the two as the
 * surroundings leave them; where that is less than the plates' own ratio, the first loses more than the second.
 */
export const isSamePower = (kw: number, otherKw: number, deratedRatio: number): boolean =>
  (kw / otherKw >= WRITTEN_SHORT || customaryPair(kw, otherKw)) && deratedRatio >= (kw / otherKw) * (1 - 1e-9);
