import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { fedOf } from '../fed';

/**
 * Is the motor plated for the hertz it is fed with? Without such a row it can still run where volts over hertz stay the
 * plate's; otherwise supply or plate is another one. Not asked while a row's hertz are not known.
 */
export function supplyHertz(set: PumpSet, motor: Motor | null): Doubt | null {
  const { hertz, volts, isOnDrive, fields } = fedOf(set);
  if (hertz === null || motor === null || motor.ratings.length === 0) return null;
  const plated = motor.ratings.flatMap((row) => row.hertz ?? []);
  if (plated.length < motor.ratings.length || plated.some((one) => Math.abs(one - hertz) <= ROUNDED_HZ)) return null;
  const fluxes = motor.ratings.flatMap((row) =>
    volts === null || row.volts === null || row.hertz === null ? [] : volts / hertz / (row.volts / row.hertz),
  );
  const nearest = fluxes.sort((a, b) => Math.abs(a - 1) - Math.abs(b - 1))[0];
  const isFar = nearest !== undefined && (nearest > MOST_FLUX || nearest < LEAST_FLUX);
  const flux =
    nearest === undefined || volts === null ? '' : `; volts over hertz are ${figure(nearest)} of the plate’s`;
  return {
    rule: 'supply-hertz',
    thing: 'set',
    // A drive is set to any base frequency: another one than the plate's is a setting to look at.
    grade: isFar && !isOnDrive ? 'wrong' : 'doubtful',
    field: fields.hertz,
    have: hertz,
    expected: [...new Set(plated)].map((one) => figure(one)).join(' or '),
    unit: 'Hz',
    says: `Fed with ${figure(hertz)} Hz; the plate of ${motor.id} is for ${[...new Set(plated)].map((one) => figure(one)).join(' and ')} Hz${flux}.`,
    cite: 'plate against supply: volts over hertz stay (read in two texts); limits common practice, no source',
    figures: figuresOf({
      hertz,
      volts,
      rows: motor.ratings.map((row) => `${row.volts ?? '-'}/${row.hertz ?? '-'}`).join('+'),
    }),
  };
}

const ROUNDED_HZ = 0.5;
const LEAST_FLUX = 0.8;
const MOST_FLUX = 1.2;
