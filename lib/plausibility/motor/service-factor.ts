import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { hpOfKw } from '@/lib/units/power';
import type { Doubt } from '../doubt';

/**
 * Can the service factor be used, and is there such a one? It is a share of rated power for lasting duty. Not asked where
 * none above 1.0 is told.
 */
export function serviceFactor(motor: Motor): Doubt | null {
  const { duty, classification, ratings } = motor;
  const line = ratings.findIndex((row) => row.serviceFactor !== null && row.serviceFactor > 1);
  const have =
    motor.serviceFactor !== null && motor.serviceFactor > 1 ? motor.serviceFactor : ratings[line]?.serviceFactor;
  if (have === null || have === undefined) return null;
  const field = motor.serviceFactor === have ? 'serviceFactor' : `ratings.${line}.serviceFactor`;
  const about = { rule: 'service-factor', thing: 'motor', grade: 'doubtful', field, have, unit: null } as const;
  if (duty !== null && duty !== 'S1')
    return {
      ...about,
      expected: 1,
      says: `Service factor ${figure(have)} with duty ${duty}: a service factor is for continuous duty, S1.`,
      cite: 'common practice, no source',
      figures: figuresOf({ sf: have, duty }),
    };
  if (classification !== null && isOpenDanger(classification))
    return {
      ...about,
      expected: 1,
      says: `Service factor ${figure(have)} with an area mark for a place where gas or dust is present in normal running: certificates there hold at the rated power.`,
      cite: 'from memory',
      figures: figuresOf({ sf: have, area: 'normal running' }),
    };
  const powers = ratings.flatMap((row) => row.kw ?? []);
  if (powers.length === 0) return null;
  const kw = Math.max(...powers);
  const printed = mostFor(hpOfKw(kw));
  if (have <= printed + STEP) return null;
  return {
    ...about,
    expected: printed,
    says: `Service factor ${figure(have)} at ${figure(hpOfKw(kw), 1)} hp, where the table prints ${figure(printed)} and hardly more than ${figure(printed + STEP)} is sold.`,
    cite: 'NEMA MG 1-12.51 (read in two texts); how much more: common practice, no source',
    figures: figuresOf({ sf: have, kw }),
  };
}

const isOpenDanger = (area: NonNullable<Motor['classification']>): boolean =>
  area.scheme === 'NEC' ? area.division === 1 : [0, 1, 20, 21].includes(area.zone);

/** The greatest that MG 1-12.51 prints for a size at any speed, open motors. */
const mostFor = (hp: number): number => (hp <= 0.13 ? 1.4 : hp <= 0.34 ? 1.35 : hp <= 1.02 ? 1.25 : 1.15);
/** Farm and pool motors are stamped a step above the table. */
const STEP = 0.1;
