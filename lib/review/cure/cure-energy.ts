import { oversizedCost } from '@/lib/energy/oversized-cost';
import type { WorkedOut } from '@/lib/energy/worked-out';
import { buyable } from '@/lib/matching/buy/buyable';
import type { Motor } from '@/lib/plant/motor';
import type { ReviewCase } from '../review-case';
import type { Cure } from './cure';

/** What a cure by another motor takes in a year more than the motor there is; below zero it saves. */
export interface CureEnergy {
  moreKwhPerYear: WorkedOut;
  moreMoneyPerYear: WorkedOut;
}

/** Null: the cure is no other motor. `onShelf` finds a motor by its plant number. */
export function cureEnergy(
  { set, motor, by }: ReviewCase,
  cure: Cure,
  onShelf: (number: string) => Motor | null,
): CureEnergy | null {
  if (cure.kind !== 'shelf' && cure.kind !== 'buy') return null;
  const other = cure.kind === 'shelf' ? onShelf(cure.motor) : buyable(set).find(({ id }) => id === cure.motor);
  if (!other) return null;
  const { moreKwhPerYear, moreMoneyPerYear } = oversizedCost(set, motor, other, by.settings);
  return { moreKwhPerYear, moreMoneyPerYear };
}
