import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from './context';
import type { Finding } from './finding';

/** One question asked of a candidate. Null: the question is not asked of this set. */
export type Criterion = (set: PumpSet, candidate: Motor, context: Context) => Finding | null;
