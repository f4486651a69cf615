import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { RunningAtDuty } from './running-at-duty';
import { runningOf } from './running-of';
import { type WorkedOut, workedOut } from './worked-out';

/** Another motor at the same duty, against the one there is. Differences are instead − was: above zero it takes more. */
export interface Instead {
  was: RunningAtDuty;
  instead: RunningAtDuty;
  /** It runs faster by so much; a centrifugal pump then asks for more, with the cube. */
  moreRpm: WorkedOut;
  /** Of the shaft, by the speed alone. */
  moreShaftKw: WorkedOut;
  moreInputKw: WorkedOut;
  moreKvar: WorkedOut;
  /** Below zero is saved. */
  moreKwhPerYear: WorkedOut;
  moreMoneyPerYear: WorkedOut;
}

/**
 * What `other` would take in the place of `motor`: each where its own torque line meets the load (k = 2 for a centrifugal
 * pump: power with the cube of speed; k = 0: with the speed), at its own efficiency and power factor there. A better
 * motor that runs faster can so take more.
 */
export function oversizedCost(set: PumpSet, motor: Motor, other: Motor, settings: SiteSettings): Instead {
  const was = runningOf(set, motor, settings);
  const instead = runningOf(set, other, settings);
  const more = (key: Exclude<keyof RunningAtDuty, 'assumes'>, what: string) =>
    workedOut({ was: was[key], instead: instead[key] }, (of) => of.instead - of.was, what);
  return {
    ...{ was, instead },
    moreRpm: more('motorRpm', 'its own speed at the load, less that of the motor there is'),
    moreShaftKw: more('loadKw', 'what the pump asks at its speed, less what it asks now'),
    moreInputKw: more('inputKw', 'its input less that of the motor there is'),
    moreKvar: more('reactiveKvar', 'its reactive power less that of the motor there is'),
    moreKwhPerYear: more('kwhPerYear', 'its energy in a year less that of the motor there is'),
    moreMoneyPerYear: more('moneyPerYear', 'what its energy costs in a year less that of the motor there is'),
  };
}
