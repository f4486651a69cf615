import { figure } from '@/lib/units/figure';
import { hpOfKw } from '@/lib/units/power';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';

/** Single-phase motors are seldom built or kept larger: common practice, no source. */
const CUSTOMARY_UP_TO_HP = 3;
/** The largest that the code's table of single-phase currents prints. */
const PRINTED_UP_TO_HP = 10;
/** 2.2 kW is 2.95 hp and is sold as 3 hp. */
const ROUNDED = 1.01;

/** Is a single-phase motor larger than they are customary, in hp? Not asked of three phases, nor while its power is unknown. */
export function singlePhase({ motor, context }: ReviewCase): ReviewFinding | null {
  const isSingle = motor.phases === 1 || (motor.phases === null && motor.kind === 'single-phase');
  const kw = context.row.plate?.kw ?? null;
  if (!isSingle || kw === null) return null;
  const hp = hpOfKw(kw);
  if (hp <= CUSTOMARY_UP_TO_HP * ROUNDED) return null;
  const isBeyond = hp > PRINTED_UP_TO_HP * ROUNDED;
  return raised({
    rule: 'single-phase',
    urgency: isBeyond ? 'plan' : 'next-time',
    have: hp,
    need: isBeyond ? PRINTED_UP_TO_HP : CUSTOMARY_UP_TO_HP,
    unit: 'hp',
    says: `A single-phase motor of ${figure(hp, 1)} hp (${figure(kw)} kW); customary are up to ${CUSTOMARY_UP_TO_HP} hp${isBeyond ? `, and the table of their currents ends at ${PRINTED_UP_TO_HP} hp` : ''}. Spares are rare, and its inrush comes on one pair of lines.`,
    cite: isBeyond ? 'NEC Table 430.248 ends at 10 hp (read in two texts)' : 'up to 3 hp: common practice, no source',
    figures: { kw, phases: motor.phases },
  });
}
