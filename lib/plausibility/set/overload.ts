import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { servingRow } from '../fed';

/**
 * Can the overload be set to the plate's amps? In A. In a phase leg of star-delta it sees 0.58 of them. Not asked on a
 * drive, without a dial, or where no row of the plate is for the supply.
 */
export function overload(set: PumpSet, motor: Motor | null): Doubt | null {
  const { overloadMinA: from, overloadMaxA: to, overloadIn, start } = set.supply;
  if (motor === null || start === 'drive' || (from === null && to === null)) return null;
  const row = servingRow(set, motor);
  if (row === null || row.amps === null) return null;
  const isInPhase = overloadIn === 'phase';
  const seen = isInPhase ? row.amps / Math.sqrt(3) : row.amps;
  const factor = row.serviceFactor ?? motor.serviceFactor;
  const ceiling = (factor !== null && factor >= 1.15 ? 1.25 : 1.15) * seen;
  const isLow = to !== null && to < seen * ROUNDED_DOWN;
  const isHigh = from !== null && from > seen * ROUNDED_UP;
  if (!isLow && !isHigh) return null;
  const plate = `${isInPhase ? `${figure(row.amps)} A / √3 = ` : ''}${figure(seen)} A`;
  const dial = `the dial goes from ${from === null ? 'not known' : figure(from)} to ${to === null ? 'not known' : figure(to)} A`;
  return {
    rule: 'overload',
    thing: 'set',
    grade: isHigh ? (from > ceiling ? 'wrong' : 'doubtful') : (to as number) < seen * HALF ? 'wrong' : 'doubtful',
    field: isHigh ? 'supply.overloadMinA' : 'supply.overloadMaxA',
    have: isHigh ? from : to,
    expected: Number(seen.toPrecision(3)),
    unit: 'A',
    says: isHigh
      ? `The plate of ${motor.id} gives ${plate}, and ${dial}: at its lowest it trips late, where ${figure(ceiling)} A is the most allowed.`
      : `The plate of ${motor.id} gives ${plate}, and ${dial}: at its highest it trips below full load.`,
    cite: 'NEC 430.32(A)(1): 125 % of the plate with a service factor of 1.15, else 115 % (read in two texts)',
    figures: figuresOf({ from, to, in: overloadIn, amps: row.amps, factor }),
  };
}

/** A dial is marked to a twentieth. */
const ROUNDED_DOWN = 0.95;
const ROUNDED_UP = 1.05;
const HALF = 0.5;
