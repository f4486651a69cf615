import type { PerPhase } from '@/lib/energy/measured';
import type { PumpSet } from '@/lib/plant/set';
import { allThree, unbalancePct } from '@/lib/standards/unbalance';

/** How uneven three lines are, per cent of their mean (NEMA MG 1 14.36, read in two texts); null: not all three were read. */
export function unevenPct(read: PerPhase): number | null {
  const three = allThree(read);
  return three === null ? null : unbalancePct(three);
}

/**
 * The set with the unbalance of its supply as it was measured last. A measurement has a day and a name, the figure typed of
 * the supply has neither, so the measurement counts. Of a drive its output was read, which is no supply.
 */
export function asMeasured(set: PumpSet, volts: PerPhase): PumpSet {
  const uneven = unevenPct(volts);
  if (uneven === null || set.supply.start === 'drive' || set.supply.phases === 1) return set;
  return { ...set, supply: { ...set.supply, unbalancePct: uneven } };
}
