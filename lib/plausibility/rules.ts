import type { Motor } from '@/lib/plant/motor';
import type { Doubt, MOTOR_RULES } from './doubt';
import { amps } from './motor/amps';
import { codeLetter } from './motor/code-letter';
import { efficiency } from './motor/efficiency';
import { powerOfRows } from './motor/power-of-rows';
import { speed } from './motor/speed';

type MotorRule = (motor: Motor) => Doubt | null;

/** Every question asked of a motor's plate, in the table's order. */
export const motorRules: readonly (readonly [(typeof MOTOR_RULES)[number], MotorRule])[] = [
  ['speed', speed],
  ['amps', amps],
  ['power-of-rows', powerOfRows],
  ['efficiency', efficiency],
  ['code-letter', codeLetter],
];
