import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { eachInAll } from './bits';
import { byEnclosure } from './by-enclosure';
import { byFootHoles } from './by-foot-holes';
import { byHeight } from './by-height';
import { byHolding } from './by-holding';
import { bySupply } from './by-supply';
import { unblocked } from './classes';
import type { MotorKind } from './kinds';
import { loadBlocksOf, type MotorBound, motorBoundAt } from './load-bound';

/** For one set, the kinds of motor that are not certain to be unsuitable. */
export type Screen = (set: PumpSet) => MotorKind[];

/**
 * A cheap sieve of the same motors for many sets. It drops a kind only where a finding would block it: supply, mounting
 * and enclosure by asking the criteria themselves, once for each kind of set; power, speed and amps by a bound. Keep it as
 * long as the motors and the settings hold.
 */
export function screenOf(kinds: readonly MotorKind[], settings: SiteSettings): Screen {
  const motors = kinds.map(({ one }) => one);
  const sieves = [bySupply, byHolding, byHeight, byFootHoles, byEnclosure].map((reads) =>
    unblocked(motors, settings, reads),
  );
  const boundsBySupply = new Map<string, MotorBound[]>();
  return (set) => {
    const key = bySupply.ofSet(set);
    const bounds = boundsBySupply.get(key) ?? motors.map((motor) => motorBoundAt(set, motor));
    boundsBySupply.set(key, bounds);
    const blocks = loadBlocksOf(set);
    const left: MotorKind[] = [];
    const passed = sieves.map((sieve) => sieve(set));
    eachInAll(passed, (i) => {
      if (!blocks(bounds[i] as MotorBound)) left.push(kinds[i] as MotorKind);
    });
    return left;
  };
}
