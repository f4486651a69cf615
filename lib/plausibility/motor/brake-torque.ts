import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { torqueNmOf } from '@/lib/units/torque';
import type { Doubt } from '../doubt';

/** Does the brake belong to the motor's torque? In N·m. Not asked without a brake torque, a power and a speed. */
export function brakeTorque({ brake, ratings, has }: Motor): Doubt | null {
  const have = brake.torqueNm;
  if (have === null) return null;
  const about = { rule: 'brake-torque', thing: 'motor', field: 'brake.torqueNm', have, unit: 'N·m' } as const;
  if (has !== null && !has.includes('brake'))
    return {
      ...about,
      grade: 'wrong',
      expected: null,
      says: `A brake of ${figure(have)} N·m stands on the plate, and the motor is told to have none.`,
      cite: 'two words on one thing',
      figures: figuresOf({ brake: have, has: 'none' }),
    };
  const row = ratings.find(({ kw, rpm }) => kw !== null && rpm !== null);
  if (!row || row.kw === null || row.rpm === null) return null;
  const rated = torqueNmOf(row.kw, row.rpm);
  const share = have / rated;
  if (share >= LEAST && share <= MOST) return null;
  return {
    ...about,
    grade: share < LEAST / FAR || share > MOST * FAR ? 'wrong' : 'doubtful',
    expected: Number(rated.toPrecision(3)),
    says: `9549 × ${figure(row.kw)} kW / ${figure(row.rpm)} rpm = ${figure(rated, 1)} N·m at full load; the brake’s ${figure(have)} N·m is ${figure(share)} times that, where brakes have ${LEAST} to ${MOST} times.`,
    cite: 'T = 9550 P / n (read in two texts); the range: common practice, no source',
    figures: figuresOf({ brake: have, kw: row.kw, rpm: row.rpm }),
  };
}

const LEAST = 0.4;
const MOST = 6;
const FAR = 5;
