import type { PumpSet } from '@/lib/plant/set';
import { deratingOf } from '../context/derating';
import { drivenLoadOf, failedRowOf } from '../context/driven-load';

/**
 * The least rated power, kW, that a motor bought for the set must have: the load, made up for what height and unbalance
 * take; a heat above 40 °C is asked of the new motor's plate instead. Null: neither load nor failed power is told.
 */
export function leastKwOf(set: PumpSet): number | null {
  const { motorKw, shaftKw } = drivenLoadOf(set);
  const failedKw = failedRowOf(set)?.kw ?? null;
  // A gear without an efficiency is judged like for like, and the pump's own power is the least it can be.
  const loadKw = motorKw ?? (failedKw === null ? shaftKw : Math.max(failedKw, shaftKw ?? 0));
  if (loadKw === null) return null;
  const cool = { ...set, surroundings: { ...set.surroundings, ambientC: null } };
  return set.failed === null ? loadKw : loadKw / deratingOf(cool, set.failed).factor;
}
