import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import type { Criterion } from '../criterion';

/**
 * Criteria that read the same few fields of a set and of a motor. Sets that tell the same in those fields, and motors that
 * do, get the same grades, work and checks from them, whatever else they tell. A field is named by its path, and a path
 * stands for all that lies below it.
 */
export interface Aspect {
  id: string;
  criteria: readonly Criterion[];
  /** `all`: it reads so much of a set that hardly two are alike. */
  ofSet: readonly string[] | 'all';
  ofMotor: readonly string[];
  /** Whether it also reads the mounting that follows from a frame, the candidate's and the failed motor's. */
  isByFit: boolean;
}

/** For a set what an aspect reads of it, as one value to compare. */
export function setKeyOf({ ofSet, isByFit }: Aspect): (set: PumpSet) => unknown {
  if (ofSet === 'all') return (set) => set;
  const read = readerOf(ofSet);
  return isByFit ? (set) => `${read(set)} ${set.failed === null ? 'none' : fitKey(set.failed)}` : read;
}

export function motorKeyOf({ ofMotor, isByFit }: Aspect): (motor: Motor) => string {
  const read = readerOf(ofMotor);
  return isByFit ? (motor) => `${read(motor)} ${fitKey(motor)}` : read;
}

function readerOf(paths: readonly string[]): (thing: object) => string {
  const all = paths.map((path) => path.split('.'));
  return (thing) => JSON.stringify(all.map((path) => at(thing, path, 0)));
}

/** What is said of a thing that is not there; nothing on a plate reads so. */
const NONE = '\u0000none';

function at(thing: unknown, path: readonly string[], from: number): unknown {
  for (let i = from; i < path.length; i += 1) {
    if (Array.isArray(thing)) return thing.map((one) => at(one, path, i));
    if (thing === null || thing === undefined) return NONE;
    thing = (thing as Record<string, unknown>)[path[i] as string];
  }
  // "Unclassified" is null, "not known" is undefined: JSON would make one of them.
  return thing === undefined ? NONE : thing;
}

/** Motors of one frame share one mounting, the very same object, unless something was measured at one. */
function fitKey(motor: Motor): string {
  const fit = motorDimensions(motor);
  let number = numbers.get(fit);
  if (number === undefined) {
    number = next;
    next += 1;
    numbers.set(fit, number);
  }
  return `${number} ${motor.frame} ${motor.mounting} ${motor.poles}`;
}
const numbers = new WeakMap<object, number>();
let next = 0;
