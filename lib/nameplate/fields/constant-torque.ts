import type { PartReading } from '../part-reading';
import { letters } from './letters';

/** "CT 10:1": a declared constant-torque speed range. */
export function constantTorque(text: string): PartReading {
  return letters('constantTorqueRange', Number(/\d+/.exec(text)?.[0] ?? Number.NaN), text);
}
