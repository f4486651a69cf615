import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { contextOf } from '../context';
import type { Criterion } from '../criterion';
import { type Bits, noBits, setBit } from './bits';

/** What a group of criteria reads, as keys: sets of one key and motors of one key get the same grades. */
interface Reads {
  criteria: readonly Criterion[];
  ofSet: (set: PumpSet) => string;
  ofMotor: (motor: Motor) => unknown;
}

/**
 * The motors that no criterion of the group blocks, for any set: each is asked once for a kind of set and a kind of motor,
 * however many pairs there are. The keys must hold all that the criteria read.
 */
export function unblocked(
  motors: readonly Motor[],
  settings: SiteSettings,
  { criteria, ofSet, ofMotor }: Reads,
): (set: PumpSet) => Bits {
  const classes = placesByKey(motors, ofMotor);
  const known = new Map<string, Bits>();
  return (set) => {
    const key = ofSet(set);
    const before = known.get(key);
    if (before !== undefined) return before;
    const bits = noBits(motors.length);
    for (const places of classes) {
      const motor = motors[places[0] as number] as Motor;
      const context = contextOf(set, motor, { settings, asOf: null });
      if (criteria.every((ask) => ask(set, motor, context)?.grade !== 'block')) for (const i of places) setBit(bits, i);
    }
    known.set(key, bits);
    return bits;
  };
}

function placesByKey(motors: readonly Motor[], keyOf: (motor: Motor) => unknown): number[][] {
  const places = new Map<unknown, number[]>();
  motors.forEach((motor, i) => {
    const key = keyOf(motor);
    const known = places.get(key);
    if (known === undefined) places.set(key, [i]);
    else known.push(i);
  });
  return [...places.values()];
}
