import { ratingRowOf } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { IeClass } from '@/lib/plant/site-settings';
import { classEfficiency } from '../class-efficiency';
import type { WorkedOut } from '../worked-out';

/** The same motor with another efficiency on its plate; null: none printed. */
export const withEfficiency = (motor: Motor, efficiencyPct: number | null): Motor => ({
  ...motor,
  ratings: motor.ratings.map((rating) => ({ ...rating, efficiencyPct })),
});

/** What a class asks of a motor of this rating at the set's supply, %. */
export function efficiencyInClass(set: PumpSet, motor: Motor, ieClass: IeClass): WorkedOut {
  const { plate } = ratingRowOf(set, motor);
  return classEfficiency(ieClass, motor, plate?.kw ?? null, plate?.hertz ?? null);
}
