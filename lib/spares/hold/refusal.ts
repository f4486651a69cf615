import type { HoldCandidate, Offered } from './candidate';
import type { ChoiceOptions } from './hold-options';
import type { Served } from './served';

/** Why a motor that could go in is not counted as cover. */
export const REFUSALS = ['left-out', 'source', 'work', 'hours', 'checks', 'lead', 'price'] as const;
export type Refusal = (typeof REFUSALS)[number];

/** Why a candidate is left out whatever the set; null: it may be chosen. */
export function refusalOf(candidate: HoldCandidate, offered: Offered, options: ChoiceOptions): Refusal | null {
  const { from, motor, numbers } = candidate;
  if ((from === 'shelf' ? numbers : [motor.id]).some((name) => options.without.includes(name))) return 'left-out';
  if (options.from !== 'both' && options.from !== from) return 'source';
  if (from === 'shelf') return null;
  const { mostLeadDays } = options;
  // Days that nobody told are not short enough.
  if (mostLeadDays !== null && (offered.leadDays === null || offered.leadDays > mostLeadDays)) return 'lead';
  return options.aim !== 'fewest' && offered.price === null ? 'price' : null;
}

/** Why it does not count for this set; null: it counts. */
export function notCounted({ verdict, hours, needsWork, clearedBy }: Served, options: ChoiceOptions): Refusal | null {
  if (options.checks === 'none' && verdict === 'check-first') return 'checks';
  if (options.checks === 'readings' && clearedBy === 'person') return 'checks';
  if (!needsWork) return null;
  return options.fit === 'straight-swap' ? 'work' : hours > options.mostHours ? 'hours' : null;
}
