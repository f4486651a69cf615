import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { eachInBoth } from './bits';
import { byMount } from './by-mount';
import { bySupply } from './by-supply';
import { loadBlocksOf } from './load-bound';

/** For one set, the motors that the findings would not call unsuitable for what the screen looks at, as indices. */
export type Screen = (set: PumpSet) => number[];

/**
 * A cheap sieve of the same motors for many sets. It drops a motor only where a finding would block it: the criteria
 * themselves are asked, once for each kind of supply and each kind of seat instead of once for each pair; power and
 * speed by a bound. Keep it as long as the list of motors and the settings hold.
 */
export function screenOf(motors: readonly Motor[], settings: SiteSettings): Screen {
  const supplied = bySupply(motors, settings);
  const mounted = byMount(motors, settings);
  return (set) => {
    const { fit, bounds } = supplied(set);
    const blocks = loadBlocksOf(set);
    const left: number[] = [];
    eachInBoth(fit, mounted(set), (i) => {
      if (!blocks(bounds, i)) left.push(i);
    });
    return left;
  };
}
