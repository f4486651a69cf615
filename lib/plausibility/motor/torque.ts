import type { Motor } from '@/lib/plant/motor';
import { minimumTorque } from '@/lib/standards/minimum-torque';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { worstOf } from '../worst-of';

/**
 * Can these be the motor's torques? In per cent of full-load torque. Less than the design letter promises, a breakdown
 * below the locked-rotor torque, or more than motors have is hard to believe; a breakdown below full load cannot be.
 */
export function torque(motor: Motor): Doubt | null {
  const { lockedRotorPct: locked, breakdownPct: breakdown, design, poles, kind } = motor;
  const kw = motor.ratings.find((row) => row.kw !== null)?.kw ?? null;
  const figures = figuresOf({ locked, breakdown, design, poles, kw, kind });
  const of = (
    grade: Doubt['grade'],
    field: 'lockedRotorPct' | 'breakdownPct',
    expected: number | null,
    says: string,
    cite: string,
  ): Doubt => ({
    rule: 'torque',
    thing: 'motor',
    grade,
    field,
    have: motor[field],
    expected,
    unit: '%',
    says,
    cite,
    figures,
  });

  const promised = (field: 'lockedRotorPct' | 'breakdownPct', words: string): Doubt | null => {
    const have = motor[field];
    if (have === null || design === null || kw === null || poles === null) return null;
    const least = minimumTorque(field === 'lockedRotorPct' ? 'locked-rotor' : 'breakdown', design, kw, poles);
    if (least === null || have >= least.pct * ROUNDED) return null;
    const says = `${words} ${figure(have)} %, where design ${design} promises ${figure(least.pct)} % at ${figure(kw)} kW and ${poles} poles.`;
    return of('doubtful', field, least.pct, says, least.cite);
  };

  return worstOf([
    breakdown !== null && breakdown < 100
      ? of(
          'wrong',
          'breakdownPct',
          100,
          `Breakdown torque ${figure(breakdown)} % is less than the 100 % of full load: it would stall before it carries its rating.`,
          'the percentages are of full-load torque',
        )
      : null,
    promised('breakdownPct', 'Breakdown torque'),
    promised('lockedRotorPct', 'Locked-rotor torque'),
    locked !== null && breakdown !== null && breakdown < locked && design !== null && RISES.test(design)
      ? of(
          'doubtful',
          'breakdownPct',
          locked,
          `Breakdown torque ${figure(breakdown)} % is below the locked-rotor torque, ${figure(locked)} %: with design ${design} it is the greater of the two.`,
          'shape of the torque curve of designs A, B and N (common practice, no source)',
        )
      : null,
    locked !== null && locked > MOST_LOCKED
      ? of(
          'doubtful',
          'lockedRotorPct',
          MOST_LOCKED,
          `Locked-rotor torque ${figure(locked)} % is over ${MOST_LOCKED} %: are these N·m or lb·ft?`,
          PRACTICE,
        )
      : null,
    breakdown !== null && breakdown > MOST_BREAKDOWN
      ? of(
          'doubtful',
          'breakdownPct',
          MOST_BREAKDOWN,
          `Breakdown torque ${figure(breakdown)} % is over ${MOST_BREAKDOWN} %: are these N·m or lb·ft?`,
          PRACTICE,
        )
      : null,
  ]);
}

/** Designs whose torque rises from standstill to breakdown. */
const RISES = /^(A|B|N|NE|NY|NEY)$/;
const ROUNDED = 0.995;
const MOST_LOCKED = 400;
const MOST_BREAKDOWN = 500;
const PRACTICE = 'common practice, no source';
