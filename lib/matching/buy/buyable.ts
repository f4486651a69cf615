import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { standardRatings } from '@/lib/standards/standard-ratings';
import { polesOfSpeed } from '@/lib/standards/synchronous-speed';
import { deratingOf } from '../context/derating';
import { drivenLoadOf, failedRowOf } from '../context/driven-load';
import { fedBy } from '../context/fed-by';
import { isSameSize } from './is-same-size';
import { motorAskedFor } from './motor-asked-for';

/** How many sizes are offered from the least that carries the load upwards. */
const SIZES = 3;
const EXACTLY = 1 - 1e-9;

/**
 * Standard ratings that could be bought for a set: the least power that carries the load and the next ones, and the failed
 * motor's own, each as the motor a purchase would ask for. Empty where no standard assignment of frames answers:
 * single-phase, other hertz, poles or power that nobody told.
 */
export function buyable(set: PumpSet): Motor[] {
  const { phases, hertz } = fedBy(set);
  const poles = polesOf(set, hertz);
  const kw = leastKwOf(set);
  if (phases !== 3 || hertz === null || poles === null || kw === null) return [];

  const failedKw = failedRowOf(set)?.kw ?? null;
  const offers: Motor[] = [];
  for (const system of systemsOf(set, hertz)) {
    const ratings = standardRatings(system)
      .filter((rating) => rating.poles === poles)
      .sort((a, b) => a.kw - b.kw);
    const enough = ratings.filter((rating) => rating.kw >= kw * EXACTLY || isSameSize(rating.kw, kw)).slice(0, SIZES);
    const alike = ratings.filter(
      (rating) => failedKw !== null && isSameSize(rating.kw, failedKw) && !enough.includes(rating),
    );
    for (const rating of [...alike, ...enough]) offers.push(motorAskedFor(set, system, rating));
  }
  return offers;
}

function polesOf(set: PumpSet, hertz: number | null): number | null {
  if (set.failed?.poles) return set.failed.poles;
  const rpm = failedRowOf(set)?.plate?.rpm ?? drivenLoadOf(set).motorRpm;
  return rpm === null || hertz === null ? null : polesOfSpeed(rpm, hertz);
}

/** The load, made up for what height and unbalance take; a heat above 40 °C is asked of the new motor's plate instead. */
function leastKwOf(set: PumpSet): number | null {
  const { motorKw, shaftKw } = drivenLoadOf(set);
  const failedKw = failedRowOf(set)?.kw ?? null;
  // A gear without an efficiency is judged like for like, and the pump's own power is the least it can be.
  const loadKw = motorKw ?? (failedKw === null ? shaftKw : Math.max(failedKw, shaftKw ?? 0));
  if (loadKw === null) return null;
  const cool = { ...set, surroundings: { ...set.surroundings, ambientC: null } };
  return set.failed === null ? loadKw : loadKw / deratingOf(cool, set.failed).factor;
}

/** The failed motor's family of frames; without a plate the families sold for that frequency. */
function systemsOf(set: PumpSet, hertz: number): readonly ('NEMA' | 'IEC')[] {
  if (hertz !== 60 && hertz !== 50) return [];
  const system = set.failed === null ? null : motorDimensions(set.failed).system;
  if (hertz === 50) return ['IEC']; // the NEMA assignments are for 60 Hz
  return system === null ? ['NEMA', 'IEC'] : [system];
}
