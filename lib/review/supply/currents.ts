import { UNBALANCE_CITE, UNEVEN_ABOVE_PCT } from '@/lib/standards/unbalance';
import { figure } from '@/lib/units/figure';
import { unevenPct } from '../as-measured';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';

/** Do its three lines carry the same, as they were read last? Not asked where not all three were read. */
export function currents({ set, motor, known: { amps } }: ReviewCase): ReviewFinding | null {
  if (set.supply.phases === 1 || motor.phases === 1) return null;
  const pct = unevenPct(amps);
  if (pct === null || pct <= UNEVEN_ABOVE_PCT) return null;
  const dead = amps.flatMap((one, i) => (one === 0 ? [`L${i + 1}`] : []));
  const [a, b, c] = amps.map((one) => figure(one as number, 2));
  return raised({
    ...{ rule: 'currents', urgency: dead.length > 0 ? 'at-once' : 'look' },
    ...{ have: pct, need: UNEVEN_ABOVE_PCT, unit: '%', cite: UNBALANCE_CITE },
    says: `${a}, ${b} and ${c} A were read: one is ${figure(pct, 1)} % off their mean.${dead.length > 0 ? ` ${dead.join(' and ')} carried nothing: a fuse, a contact or a lead is open, and the motor overheats.` : ''}`,
    reading: dead.length > 0 ? null : MOVE_THE_LEADS,
    figures: { l1: amps[0], l2: amps[1], l3: amps[2] },
  });
}

const MOVE_THE_LEADS =
  'Volts between the lines at the motor, then amps again with all three leads moved on by one: what stays with the line is the supply’s, what moves is the motor’s (40 min)';
