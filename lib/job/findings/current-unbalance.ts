import { allThree, EVEN_UP_TO_PCT, UNBALANCE_CITE, UNEVEN_ABOVE_PCT, unbalancePct } from '@/lib/standards/unbalance';
import { figure } from '@/lib/units/figure';
import { found, type ReadingFinding } from '../reading-finding';
import type { PhaseAmps } from '../readings';

/** Do the three lines carry the same? Null: no three currents were read, or none flows. */
export function currentUnbalanceFinding(amps: PhaseAmps): ReadingFinding | null {
  const three = allThree(amps);
  const pct = three === null ? null : unbalancePct(three);
  if (three === null || pct === null) return null;
  const compared = {
    about: 'current-unbalance',
    have: Math.round(pct * 10) / 10,
    need: UNEVEN_ABOVE_PCT,
    unit: '%',
    cite: UNBALANCE_CITE,
  } as const;
  const dead = three.indexOf(0);
  if (dead !== -1)
    return found('block', compared, `L${dead + 1} carries nothing: stop it. A fuse, a contact or a lead is open.`);
  if (pct > UNEVEN_ABOVE_PCT)
    return found(
      'check',
      compared,
      `Uneven by ${figure(pct, 1)} %: measure the volts between the lines at the motor, then move all three leads on by one. What stays with the line is the supply’s, what moves is the motor’s.`,
    );
  if (pct > EVEN_UP_TO_PCT)
    return found('note', compared, `Uneven by ${figure(pct, 1)} %: still usual, and worth comparing next time.`);
  return found('ok', compared, 'The three lines carry the same.');
}
