import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type KindsByKey, kindsByKey } from './kinds-by-key';

/** Keys that tell which sets, and which motors, are alike in something. */
interface Keys {
  ofSet: (set: PumpSet) => unknown;
  ofMotor: (motor: Motor) => unknown;
}

export interface Kinds {
  sets: KindsByKey<PumpSet>;
  motors: KindsByKey<Motor>;
}

export const kindsOf = ({ ofSet, ofMotor }: Keys): Kinds => ({ sets: kindsByKey(ofSet), motors: kindsByKey(ofMotor) });

/** One answer for each kind of set and kind of motor, worked out of the first of each when it is first asked for. */
export function cells<T>({ sets, motors }: Kinds, answer: (set: PumpSet, motor: Motor) => T) {
  const rows: (T | undefined)[][] = [];
  return (setKind: number, motorKind: number): T => {
    let row = rows[setKind];
    if (row === undefined) {
      row = [];
      rows[setKind] = row;
    }
    const known = row[motorKind];
    if (known !== undefined) return known;
    const worked = answer(sets.ones[setKind] as PumpSet, motors.ones[motorKind] as Motor);
    row[motorKind] = worked;
    return worked;
  };
}

/** The same for sets of which no two are alike: answers are kept until another set is asked about. */
export function cellsOfOne<T>(motors: KindsByKey<Motor>, answer: (set: PumpSet, motor: Motor, motorKind: number) => T) {
  let last: PumpSet | null = null;
  let asked = 0;
  const askedOf: number[] = [];
  const answers: T[] = [];
  return (set: PumpSet, motorKind: number): T => {
    if (last !== set) {
      last = set;
      asked += 1;
    }
    if (askedOf[motorKind] === asked) return answers[motorKind] as T;
    const worked = answer(set, motors.ones[motorKind] as Motor, motorKind);
    askedOf[motorKind] = asked;
    answers[motorKind] = worked;
    return worked;
  };
}
