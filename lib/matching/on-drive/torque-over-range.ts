import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { lowSpeedTorque } from '@/lib/standards/low-speed-torque';
import { figure } from '@/lib/units/figure';
import type { RatingRow } from '../context/rating-row';
import { type Compared, type Finding, toJudge } from '../finding';
import { joined } from '../joined';

const EXACTLY = 1 + 1e-9;

/**
 * Is there torque enough at the slowest and the fastest speed asked, where a fan cools less and the field is weak? Null:
 * there is. `setPu`: the speed it is set to, over base. `available`: rated torque as derated. A quadratic load asks its
 * torque at the set speed alone.
 */
export function torqueOverRange(
  { supply, load }: PumpSet,
  candidate: Motor,
  { hertz: base }: RatingRow,
  setPu: number,
  compared: Compared,
  available: number,
  need: number,
): Finding | null {
  if (base === null) return null;
  const isConstant = load.kind === 'constant-torque';
  const { minHertz = null, maxHertz = null } = isConstant ? (supply.drive ?? {}) : {};
  const lowest = Math.min(setPu, minHertz === null ? setPu : minHertz / base);
  const highest = maxHertz === null ? 1 : maxHertz / base;
  return joined(
    tooFast(highest, base, compared, available, need),
    tooSlow(candidate, lowest, base, compared, available, need),
  );
}

function tooFast(pu: number, base: number, compared: Compared, available: number, need: number): Finding | null {
  const left = available / Math.max(1, pu);
  if (need <= left * EXACTLY) return null;
  const says = `At ${figure(pu * base, 0)} Hz only ${figure(left)} N·m is left: the drive’s upper limit must be lower, or not used.`;
  return toJudge({ ...compared, have: left, cite: ABOVE_BASE }, says);
}

function tooSlow(
  candidate: Motor,
  pu: number,
  base: number,
  compared: Compared,
  available: number,
  need: number,
): Finding | null {
  if (pu >= 1) return null;
  const share = lowSpeedShare(candidate, pu);
  const hertz = `${figure(pu * base, 1)} Hz`;
  if (share === null) return toJudge({ ...compared, cite: LOW_SPEED }, `What it may carry at ${hertz} is not known.`);
  const left = available * share;
  if (need <= left * EXACTLY) return null;
  const says = `Cooled by its own fan it may carry about ${figure(left)} N·m at ${hertz} for long: ask its maker, or raise the lower limit.`;
  return toJudge({ ...compared, have: left, cite: LOW_SPEED }, says);
}

const ABOVE_BASE = 'Above base frequency torque falls as base over frequency (from memory)';
const LOW_SPEED = 'Torque of fan-cooled motors at low speed: a guidance curve (from memory)';

function lowSpeedShare({ constantTorqueRange, enclosure }: Motor, pu: number): number | null {
  if (constantTorqueRange !== null && pu * constantTorqueRange >= 1 / EXACTLY) return 1;
  // A blower with its own feed, or a surface that needs no fan, cools the same at any speed.
  if (enclosure === 'TEBC' || enclosure === 'TENV') return 1;
  return lowSpeedTorque(pu);
}
