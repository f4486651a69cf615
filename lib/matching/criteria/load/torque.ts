import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { USUAL_ALTITUDE_M } from '@/lib/standards/ambient-altitude-factor';
import { lowSpeedTorque } from '@/lib/standards/low-speed-torque';
import { figure } from '@/lib/units/figure';
import { torqueNmOf } from '@/lib/units/torque';
import type { Context } from '../../context';
import { drivenLoadOf, failedRowOf } from '../../context/driven-load';
import { block, type Compared, type Finding, ok, toJudge, toRead } from '../../finding';

/** Beyond what a plate and a pump curve tell apart: common practice, no source. */
const NEARLY = 1.02;
const EXACTLY = 1 + 1e-9;
/** A candidate this much stronger asks what gear and coupling carry: common practice, no source. */
const MUCH_STRONGER = 1.5;

/**
 * Does the rated torque carry a constant-torque load at every speed asked, and can coupling and gear carry the motor's?
 * N·m at the motor shaft. On a drive a quadratic load is judged at its set speed as well; on the mains power says it.
 */
export function torque(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const carried = carries(set, candidate, context);
  if (carried !== null && carried.grade !== 'ok') return carried;
  return tooStrong(set, context) ?? carried;
}

const CITE = 'Torque = 9550 × kW / rpm (read in two texts)';

function carries(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { row, derating, point } = context;
  const load = drivenLoadOf(set);
  const isDriveFed = set.supply.start === 'drive';
  if (set.load.kind === null || load.torqueNm === null) return null;
  if (set.load.kind === 'quadratic' && !isDriveFed) return null;

  const ratedNm = ratedNmOf(context);
  const running = point.restored ?? point;
  const need =
    running.torquePct === null || row.fullLoadTorqueNm === null
      ? load.torqueNm
      : (running.torquePct * row.fullLoadTorqueNm) / 100;
  if (ratedNm === null)
    return toRead(
      { criterion: 'torque', have: null, need, unit: 'N·m', cite: CITE },
      'Rated torque unknown.',
      'Rated power and full-load speed on the motor plate',
      5,
    );
  const available = ratedNm * derating.factor;
  const compared = { criterion: 'torque', have: available, need, unit: 'N·m', cite: CITE } as const;
  const pu = isDriveFed && running.hertz !== null && row.hertz !== null ? running.hertz / row.hertz : 1;
  return (
    atSetSpeed(set, context, compared, available / Math.max(1, pu), need) ??
    (isDriveFed && set.load.kind === 'constant-torque'
      ? overTheRange(set, candidate, context, compared, available, need)
      : ok(compared, `Loaded to ${figure((100 * need) / available, 0)} % of rated torque.`))
  );
}

/** What it may give continuously: rated power at rated speed, as re-rated for this supply. */
function ratedNmOf({ row }: Context): number | null {
  if (row.kw === null) return null;
  return row.rpm === null ? row.fullLoadTorqueNm : torqueNmOf(row.kw, row.rpm);
}

/** Null when it carries the load there. */
function atSetSpeed(
  { supply, surroundings }: PumpSet,
  { row, derating }: Context,
  compared: Compared,
  available: number,
  need: number,
): Finding | null {
  const share = need / available;
  if (share <= EXACTLY) {
    const weakened =
      row.phi === null || row.fullLoadTorqueNm === null ? available : row.fullLoadTorqueNm * row.phi ** 2;
    if (need <= weakened * EXACTLY) return null;
    const says = `At this voltage the motor pulls ${figure(weakened)} N·m at rated slip: it would slip more and run hotter.`;
    return toJudge({ ...compared, have: weakened, cite: VOLTAGE }, says);
  }
  if (share <= NEARLY)
    return toJudge(compared, 'Rated torque is within 2 % of the load: measure the load before deciding.');
  const isHigh = surroundings.altitudeM !== null && surroundings.altitudeM > USUAL_ALTITUDE_M;
  const mayUseFactor = supply.start !== 'drive' && row.kind === 'plated' && !isHigh && !derating.isUnknown;
  if (mayUseFactor && share <= row.serviceFactor * EXACTLY)
    return toJudge(compared, `The load uses the service factor of ${row.serviceFactor}.`);
  return block(
    { ...compared, have: available },
    `The load asks ${figure(100 * share, 0)} % of the rated torque there.`,
  );
}

const VOLTAGE = 'NEMA MG 1 9.9 and 12.44: torque varies with the square of the voltage (read in one text)';

/** The drive's lowest and highest frequency, where a fan cools less and the field is weak. */
function overTheRange(
  { supply }: PumpSet,
  candidate: Motor,
  { row }: Context,
  compared: Compared,
  available: number,
  need: number,
): Finding {
  const { minHertz = null, maxHertz = null } = supply.drive ?? {};
  if (row.hertz !== null && maxHertz !== null && maxHertz > row.hertz) {
    const atTop = (available * row.hertz) / maxHertz;
    if (need > atTop * EXACTLY) {
      const says = `At ${figure(maxHertz, 0)} Hz only ${figure(atTop)} N·m are left: the drive's upper limit must be lower, or not used.`;
      return toJudge({ ...compared, have: atTop, cite: ABOVE_BASE }, says);
    }
  }
  if (row.hertz !== null && minHertz !== null && minHertz < row.hertz) {
    const share = lowSpeedShare(candidate, minHertz / row.hertz);
    if (share === null) return toJudge(compared, `What it may carry at ${figure(minHertz, 1)} Hz is not known.`);
    const atBottom = available * share;
    if (need > atBottom * EXACTLY) {
      const says = `Cooled by its own fan it may carry about ${figure(atBottom)} N·m at ${figure(minHertz, 1)} Hz for long: ask its maker, or raise the lower limit.`;
      return toJudge({ ...compared, have: atBottom, cite: LOW_SPEED }, says);
    }
  }
  return ok(
    compared,
    `Loaded to ${figure((100 * need) / available, 0)} % of rated torque, at every speed the drive allows.`,
  );
}

const ABOVE_BASE = 'Above base frequency torque falls as base over frequency (from memory)';
const LOW_SPEED = 'Torque of fan-cooled motors at low speed: a guidance curve (from memory)';

function lowSpeedShare(candidate: Motor, speedPu: number): number | null {
  const { constantTorqueRange, enclosure } = candidate;
  if (constantTorqueRange !== null && speedPu * constantTorqueRange >= 1 - 1e-9) return 1;
  // A blower with its own feed, or a surface that needs no fan, cools the same at any speed.
  if (enclosure === 'TEBC' || enclosure === 'TENV') return 1;
  return lowSpeedTorque(speedPu);
}

/** Can coupling and gear carry what this motor can give? Null when nothing says they could not. */
function tooStrong(set: PumpSet, context: Context): Finding | null {
  const { maxTorqueNm } = set.coupling;
  const ratedNm = ratedNmOf(context);
  if (maxTorqueNm !== null) {
    const compared = { criterion: 'torque', have: ratedNm, need: maxTorqueNm, unit: 'N·m', cite: PRACTICE } as const;
    if (ratedNm === null)
      return toRead(compared, 'Rated torque unknown.', 'Rated power and full-load speed on the motor plate', 5);
    return ratedNm > maxTorqueNm * EXACTLY
      ? toJudge(compared, 'The motor can give more torque than coupling or gear may carry: limit it, or do not fit it.')
      : null;
  }
  const kw = context.row.kw;
  const failedKw = failedRowOf(set)?.kw ?? null;
  if (kw === null || failedKw === null || kw <= MUCH_STRONGER * failedKw) return null;
  const compared = { criterion: 'torque', have: kw, need: failedKw, unit: 'kW', cite: PRACTICE } as const;
  return toJudge(
    compared,
    'Over 1.5 times the failed motor: what coupling, gear and pump shaft may carry is not told.',
  );
}

const PRACTICE = 'Weakest part of the train: common practice, no source';
