import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { kindsOf, type MotorKind } from '../screen/kinds';
import { screenOf } from '../screen/screen';

/** The screen of some motors, with the kinds they were gathered in. It is kept as long as the motors and settings hold. */
export interface Sieve {
  /** The motors that are not certain to be unsuitable. */
  passing: (set: PumpSet) => Motor[];
  /** Motors of one kind get the same findings; undefined: it is none of these motors. */
  kindOf: (motor: Motor) => MotorKind | undefined;
}

export function sieveOf(motors: readonly Motor[], settings: SiteSettings): Sieve {
  const kinds = kindsOf(motors);
  const screen = screenOf(kinds, settings);
  const byMotor = new Map<Motor, MotorKind>();
  for (const kind of kinds) for (const motor of kind.members) byMotor.set(motor, kind);
  return { passing: (set) => screen(set).flatMap(({ members }) => members), kindOf: (motor) => byMotor.get(motor) };
}
