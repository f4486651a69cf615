import type { RunningAtDuty } from '@/lib/energy/running-at-duty';
import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import { loadedShare } from './loaded-share';
import type { ReviewCase } from './review-case';

/**
 * Load at duty, per cent of rated power: where motor and load meet, and beyond the line of the motor's torque the load as
 * it is told. Null: load, rating or what the transmission loses is not known.
 */
export function dutyLoadPct(asked: ReviewCase, { loadPct }: Pick<RunningAtDuty, 'loadPct'>): number | null {
  if (loadPct.value !== null) return loadPct.value;
  if (drivenLoadOf(asked.set).efficiency === null) return null;
  const share = loadedShare(asked);
  return share === null ? null : 100 * share.ofRated;
}
