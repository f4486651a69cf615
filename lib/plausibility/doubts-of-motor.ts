import type { Motor } from '@/lib/plant/motor';
import type { Doubt } from './doubt';
import { motorRules } from './rules';

/** What cannot be right on a plate, in the order of the rules. */
export function doubtsOfMotor(motor: Motor): Doubt[] {
  return motorRules.flatMap(([, ask]) => ask(motor) ?? []);
}
