import type { Motor } from '@/lib/plant/motor';
import { type Bits, noBits, setBit } from './bits';

/** Motors alike in what a group of criteria reads: one stands for all, `members` are their places in the list. */
interface MotorClass {
  one: Motor;
  members: number[];
}

export function classesOf(motors: readonly Motor[], keyOf: (motor: Motor) => unknown): MotorClass[] {
  const classes = new Map<unknown, MotorClass>();
  motors.forEach((motor, i) => {
    const key = keyOf(motor);
    const known = classes.get(key);
    if (known === undefined) classes.set(key, { one: motor, members: [i] });
    else known.members.push(i);
  });
  return [...classes.values()];
}

/** The motors of the classes that pass. */
export function passing(classes: readonly MotorClass[], length: number, passes: (one: Motor) => boolean): Bits {
  const bits = noBits(length);
  for (const { one, members } of classes) if (passes(one)) for (const i of members) setBit(bits, i);
  return bits;
}
