import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { contextOf } from '../context';
import { frequency } from '../criteria/supply/frequency';
import { phases } from '../criteria/supply/phases';
import { voltage } from '../criteria/supply/voltage';
import type { Bits } from './bits';
import { classesOf, passing } from './classes';
import { type MotorBounds, motorBoundsAt } from './load-bound';

/** What one kind of supply lets pass, and what the motors can do at it. */
export interface AtSupply {
  fit: Bits;
  bounds: MotorBounds;
}

/** Phases, voltage and frequency, asked once for each kind of supply and of plate. */
export function bySupply(motors: readonly Motor[], settings: SiteSettings): (set: PumpSet) => AtSupply {
  const classes = classesOf(motors, plateOf);
  const known = new Map<string, AtSupply>();
  return (set) => {
    const key = supplyOf(set);
    const before = known.get(key);
    if (before !== undefined) return before;
    const fit = passing(classes, motors.length, (motor) => {
      const context = contextOf(set, motor, { settings, asOf: null });
      return CRITERIA.every((ask) => ask(set, motor, context)?.grade !== 'block');
    });
    const now = { fit, bounds: motorBoundsAt(set, motors) };
    known.set(key, now);
    return now;
  };
}

const CRITERIA = [phases, voltage, frequency];

/** All that the three criteria read of a plate. Only where it tells no poles does the speed tell them. */
function plateOf({ kind, phases, poles, maxRpm, ratings }: Motor): string {
  const rows = ratings.map(({ volts, voltsMin, voltsMax, hertz, connection, rpm }) =>
    [volts, voltsMin, voltsMax, hertz, connection, poles === null || kind === 'two-speed' ? rpm : ''].join(' '),
  );
  return [kind, phases, poles, maxRpm, ...rows].join('|');
}

/** All that the three criteria, and a rating row, read of a supply. */
function supplyOf({ supply }: PumpSet): string {
  const { phases, volts, hertz, measuredVolts, unbalancePct, start, drive } = supply;
  return [phases, volts, hertz, measuredVolts, unbalancePct, start, drive?.outputVolts, drive?.baseHertz].join('|');
}
