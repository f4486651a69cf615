import { BALANCED_UP_TO_PCT } from '@/lib/standards/unbalance-factor';
import { figure } from '@/lib/units/figure';
import type { ReviewCase } from '../review-case';
import type { Change } from './cure';

/** Volts brought within what derates nothing. */
export function evenVolts({ set }: ReviewCase): Change[] {
  const { unbalancePct } = set.supply;
  if (set.supply.start === 'drive' || unbalancePct === null || unbalancePct <= BALANCED_UP_TO_PCT) return [];
  return [
    {
      what: `Bring the unbalance of the volts from ${figure(unbalancePct, 1)} % down to ${BALANCED_UP_TO_PCT} %`,
      hours: null,
      set: { ...set, supply: { ...set.supply, unbalancePct: BALANCED_UP_TO_PCT } },
    },
  ];
}
