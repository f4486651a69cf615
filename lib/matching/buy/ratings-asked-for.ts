import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { type StandardRating, standardRatings } from '@/lib/standards/standard-ratings';
import { polesOfSpeed } from '@/lib/standards/synchronous-speed';
import { drivenLoadOf, failedRowOf } from '../context/driven-load';
import { fedBy } from '../context/fed-by';
import { isSameSize } from './is-same-size';
import { leastKwOf } from './least-kw';

/** A standard rating, and whose assignment of frames it is of. */
export interface RatingAsked {
  system: 'NEMA' | 'IEC';
  rating: StandardRating;
}

/** How many sizes are offered from the least that carries the load upwards. */
const SIZES = 3;
const EXACTLY = 1 - 1e-9;

/**
 * Standard ratings that could be bought for a set: the failed motor's own, the least power that carries the load and the
 * next ones. Empty where no standard assignment of frames answers: single-phase, other hertz, poles or power that nobody
 * told.
 */
export function ratingsAskedFor(set: PumpSet): RatingAsked[] {
  const { phases, hertz } = fedBy(set);
  const poles = polesOf(set, hertz);
  const kw = leastKwOf(set);
  if (phases !== 3 || hertz === null || poles === null || kw === null) return [];

  const failedKw = failedRowOf(set)?.kw ?? null;
  return systemsOf(set, hertz).flatMap((system) => {
    const ratings = standardRatings(system)
      .filter((rating) => rating.poles === poles)
      .sort((a, b) => a.kw - b.kw);
    const enough = ratings.filter((rating) => rating.kw >= kw * EXACTLY || isSameSize(rating.kw, kw)).slice(0, SIZES);
    const alike = ratings.filter(
      (rating) => failedKw !== null && isSameSize(rating.kw, failedKw) && !enough.includes(rating),
    );
    return [...alike, ...enough].map((rating) => ({ system, rating }));
  });
}

function polesOf(set: PumpSet, hertz: number | null): number | null {
  if (set.failed?.poles) return set.failed.poles;
  const rpm = failedRowOf(set)?.plate?.rpm ?? drivenLoadOf(set).motorRpm;
  return rpm === null || hertz === null ? null : polesOfSpeed(rpm, hertz);
}

/** The failed motor's family of frames; without a plate the families sold for that frequency. */
function systemsOf(set: PumpSet, hertz: number): readonly ('NEMA' | 'IEC')[] {
  if (hertz !== 60 && hertz !== 50) return [];
  const system = set.failed === null ? null : motorDimensions(set.failed).system;
  if (hertz === 50) return ['IEC']; // the NEMA assignments are for 60 Hz
  return system === null ? ['NEMA', 'IEC'] : [system];
}
