import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../context';
import type { Compared } from '../finding';
import { starDelta } from './star-delta';

export type Start = NonNullable<PumpSet['supply']['start']>;

/** How this motor would be started here: one that cannot start in star goes direct where the supply allows it. */
export function startOf(set: PumpSet, candidate: Motor, context: Context): Start | null {
  const { start, directAllowed } = set.supply;
  if (start !== 'star-delta' || directAllowed !== true) return start;
  return starDelta(set, candidate, context, ASKED)?.grade === 'work' ? 'direct' : start;
}

const ASKED: Compared = { criterion: 'starting', have: null, need: 'star-delta', cite: '' };
