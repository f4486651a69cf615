import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { customaryPair } from '@/lib/standards/customary-pair';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { doubtOfRows, type RowDoubt } from '../doubt-of-rows';

/**
 * Do the rows agree on the power? Each row is held against the first with a power: at the same hertz it is the same motor
 * with the same power, in hp or in kW; at 50 Hz it gives no more than at 60. Rows of another speed are another winding.
 */
export function powerOfRows(motor: Motor): Doubt | null {
  if (motor.kind === 'two-speed') return null;
  return doubtOfRows('power-of-rows', motor, (row, line) => {
    for (const before of motor.ratings.slice(0, line)) {
      const doubt = between(before, row, motor.ratings.indexOf(before) + 1);
      if (doubt !== null) return doubt;
    }
    return null;
  });
}

function between(first: Rating, row: Rating, name: number): RowDoubt | null {
  if (first.kw === null || row.kw === null || first.hertz === null || row.hertz === null) return null;
  if (isAnotherWinding(first, row)) return null;
  const isEqual = Math.abs(row.kw / first.kw - 1) <= ROUNDED || customaryPair(first.kw, row.kw);
  if (isEqual) return null;
  const about = {
    cell: row.hp === null ? 'kw' : 'hp',
    have: row.hp ?? row.kw,
    unit: row.hp === null ? 'kW' : 'hp',
    figures: figuresOf({ kw: row.kw, hertz: row.hertz, first: first.kw, firstHertz: first.hertz }),
  } as const;
  const words = `${said(first)} at ${figure(first.hertz)} Hz in row ${name}, ${said(row)} at ${figure(row.hertz)} Hz here`;
  if (first.hertz === row.hertz) {
    const isFar = row.kw / first.kw > FAR || first.kw / row.kw > FAR;
    return {
      ...about,
      grade: isFar ? 'wrong' : 'doubtful',
      expected: said(first),
      says: `${words}: one motor has one power at one frequency.`,
      cite: PAIRS,
    };
  }
  const [slow, fast] = first.hertz < row.hertz ? [first, row] : [row, first];
  if (slow.hertz !== 50 || fast.hertz !== 60 || (slow.kw as number) < (fast.kw as number)) return null;
  const says = `${words}: no motor gives more at 50 Hz than at 60.`;
  return { ...about, grade: 'doubtful', expected: null, says, cite: 'common practice, no source' };
}

/** More than a tenth apart at one frequency: other poles. */
const isAnotherWinding = (a: Rating, b: Rating): boolean => {
  if (a.rpm === null || b.rpm === null || a.hertz === null || b.hertz === null) return false;
  return Math.abs(a.rpm / a.hertz / (b.rpm / b.hertz) - 1) > 0.1;
};

const said = ({ hp, kw }: Rating): string =>
  hp === null ? `${figure(kw as number)} kW` : `${figure(hp)} hp = ${figure(kw as number)} kW`;

/** 7.46 kW stamped as 7.5: pairs of hp and kW differ by up to 1.4 %. */
const ROUNDED = 0.015;
/** 10 hp against 10 kW is 1.34. */
const FAR = 1.3;
const PAIRS = '10 CFR 431.25: horsepower and its standard kilowatt equivalent (read in two texts to 200 hp)';
