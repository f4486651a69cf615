import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Doubt } from './doubt';
import { setRules } from './rules';

/** What cannot be right between a set and the motor in it, in the order of the rules. Null: no motor is told. */
export function doubtsOfSet(set: PumpSet, motor: Motor | null): Doubt[] {
  return setRules.flatMap(([, ask]) => ask(set, motor) ?? []);
}
