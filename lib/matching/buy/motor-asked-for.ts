import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { UNTOLD_MOTOR } from '@/lib/plant/untold';
import type { StandardRating } from '@/lib/standards/standard-ratings';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { fedBy } from '../context/fed-by';
import { type FrameAsked, frameAskedFor } from './frame-asked-for';
import { needsAskedFor } from './needs-asked-for';
import { rowAskedFor } from './row-asked-for';
import { torqueAskedFor } from './torque-asked-for';

/**
 * A standard rating as the motor a purchase for this set would ask for. It is no offer of anybody's: every figure is a
 * demand, taken from the set's needs, from the failed motor where the set states none, or from the standard. What none
 * of them tells stays unknown, for the supplier to answer.
 */
export function motorAskedFor(
  set: PumpSet,
  system: 'NEMA' | 'IEC',
  rating: StandardRating,
  { frame, mounting }: FrameAsked = frameAskedFor(set, system, rating.frame),
): Motor {
  const power = rating.hp === null ? `${figure(rating.kw)} kW` : `${figure(rating.hp)} hp`;
  const motor: Motor = {
    ...UNTOLD_MOTOR,
    ...needsAskedFor(set),
    id: `${frame} ${power} ${rating.poles}-pole`,
    kind: 'cage',
    frame,
    mounting,
    phases: 3,
    poles: rating.poles,
    ratings: [rowAskedFor(set, rating, system)],
    design: designOf(set, system),
    maxRpm: maxRpmOf(set, rating.poles),
  };
  return { ...motor, ...torqueAskedFor(set, motor) };
}

function designOf({ failed }: PumpSet, system: 'NEMA' | 'IEC'): Motor['design'] {
  if (system === 'NEMA') return failed?.design === 'C' ? 'C' : 'B';
  return failed?.design === 'H' ? 'H' : 'N';
}

/** Where the drive goes above its base: the field at its highest frequency, which slip keeps the motor below. */
function maxRpmOf(set: PumpSet, poles: number): number | null {
  const { hertz, isDriveFed } = fedBy(set);
  const most = isDriveFed ? (set.supply.drive?.maxHertz ?? null) : null;
  return hertz === null || most === null || most <= hertz ? null : synchronousSpeed(poles, most);
}
