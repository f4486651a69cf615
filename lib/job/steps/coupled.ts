import { seatOf } from '@/lib/matching/context/seat';
import type { PumpSet } from '@/lib/plant/set';

/** What can be taken apart so that the motor turns alone. A gear on feet has a coupling; one that takes a quill has not. */
export function isSplit(set: PumpSet): 'coupling' | 'belts' | 'not' {
  if (set.coupling.type === 'belt') return 'belts';
  return seatOf(set).input === 'hub' ? 'coupling' : 'not';
}
