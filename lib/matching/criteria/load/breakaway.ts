import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { drivenLoadOf, failedRowOf } from '../../context/driven-load';
import { block, type Compared, type Finding, ok, toJudge, toRead } from '../../finding';
import { joined } from '../../joined';
import { higherTorque } from '../../starting/higher-torque';
import { type Start, startOf } from '../../starting/start-of';
import { type StartingTorque, startingTorque, torqueShare } from '../../starting/starting-torque';

/** Margin at rest over the breakaway torque: 20 to 30 %, common practice, no source. */
const MARGIN = 1.2;
const DUST = 1e-9;

/**
 * Does the motor break the pump away, started as this set starts it? N·m at the motor shaft; `breakawayPct` is of the
 * load torque at `shaftKw`. Where it is unstated, only a reduced-voltage start of a constant torque and a failed motor of
 * a higher-torque design are asked.
 */
export function breakaway(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const start = startOf(set, candidate, context);
  if (set.load.breakawayPct === null) return unstated(set, candidate, start);

  const has = startingTorque(set, candidate, context.row, start);
  const share = set.load.breakawayPct / 100;
  const { losslessNm, torqueNm } = drivenLoadOf(set);
  // A new sheave on the motor changes the torque it carries.
  const scale = context.point.restored?.sheaveScale ?? 1;
  if (torqueNm === null)
    return likeForLike(set, has, start, losslessNm === null ? null : losslessNm * scale * share, share);

  const loadNm = torqueNm * scale;
  const compared: Compared = {
    criterion: 'breakaway',
    have: has.nm,
    need: loadNm * share,
    unit: 'N·m',
    cite: has.cite,
  };
  const graded = ofTorque(has, loadNm * share, compared);
  const mayHang = start === 'star-delta' && set.load.kind === 'constant-torque' && graded.grade !== 'block';
  return mayHang ? joined(pullUp(candidate, context, loadNm, compared), graded) : graded;
}

function unstated(set: PumpSet, candidate: Motor, start: Start | null): Finding | null {
  const isReduced = start === 'star-delta' || start === 'part-winding' || start === 'soft';
  const compared: Compared = { criterion: 'breakaway', have: null, need: null, unit: null, cite: REDUCED };
  const asked =
    isReduced && set.load.kind === 'constant-torque'
      ? toRead(
          compared,
          'A start at reduced voltage, and what the pump asks at rest is not stated.',
          'Breakaway torque in the pump’s sheet, or by a torque wrench on its shaft',
          30,
        )
      : null;
  return joined(asked, higherTorque(set.failed, candidate));
}

const REDUCED = 'a reduced-voltage start of a constant torque often fails (from memory)';

function ofTorque({ nm, atMostNm, isBound, missing }: StartingTorque, need: number, compared: Compared): Finding {
  if (nm === null) {
    if (atMostNm !== null && atMostNm < need * (1 - DUST))
      return block(
        { ...compared, have: atMostNm },
        `It starts with at most ${figure(atMostNm)} N·m against ${figure(need)} N·m to break away: it would not start.`,
      );
    return missing === null
      ? toJudge(compared, 'What it starts with is not known.')
      : toRead(compared, missing.says, missing.what, missing.minutes);
  }
  const says = `${figure(nm)} N·m at the start against ${figure(need)} N·m to break away`;
  if (nm < need * (1 - DUST)) return block(compared, `${says}: it would not start.`);
  if (nm >= need * MARGIN * (1 - DUST)) return ok(compared, `${says}.`);
  const tooNear = `${figure(Math.floor((100 * nm) / need + DUST) / 100)} times, under the ${MARGIN} times wanted`;
  return isBound
    ? toRead(compared, `${says}: ${tooNear}.`, 'Locked-rotor and breakdown torque in the maker’s sheet', 15)
    : toJudge(compared, `${says}: ${tooNear}.`);
}

/** In star it must also carry the load up to changeover. A quadratic load asks little there. Null: it does. */
function pullUp(candidate: Motor, { row }: Context, loadNm: number, compared: Compared): Finding | null {
  if (row.fullLoadTorqueNm === null || row.phi === null) return null; // told already: the torque itself is unknown
  const share = torqueShare('pull-up', candidate, row);
  if (share === null)
    return toRead(
      { ...compared, have: null, need: loadNm },
      'Whether it carries the load up to changeover is unknown.',
      'Pull-up torque in the maker’s sheet',
      15,
    );
  const nm = (row.fullLoadTorqueNm * row.phi * row.phi * share.share) / 3;
  if (nm >= loadNm * (1 - DUST)) return null;
  return block(
    { ...compared, have: nm, need: loadNm, cite: share.cite },
    `In star it pulls up with ${figure(nm)} N·m and would hang below changeover: the load asks ${figure(loadNm)} N·m.`,
  );
}

/** Load torque not known in full: a motor that starts with no less than the failed one passes. */
function likeForLike(
  set: PumpSet,
  has: StartingTorque,
  start: Start | null,
  leastNm: number | null,
  share: number,
): Finding {
  const row = failedRowOf(set);
  const had = set.failed === null || row === null ? null : startingTorque(set, set.failed, row, start).nm;
  const compared: Compared = { criterion: 'breakaway', have: has.nm, need: leastNm ?? had, unit: 'N·m', cite: LIKE };
  const most = has.nm ?? has.atMostNm;
  if (leastNm !== null && most !== null && most < leastNm * (1 - DUST))
    return block(
      compared,
      `${figure(most)} N·m at the start is less than the ${figure(leastNm)} N·m the pump asks, before any losses.`,
    );
  if (has.nm === null) return ofTorque(has, leastNm ?? 0, compared);
  if (had !== null && has.nm >= had * SAME_TORQUE)
    return ok(compared, 'It starts with as much torque as the failed motor, within 5 %.');
  // At worst the pump took all that the failed motor was rated for.
  const worst = leastNm === null && row !== null ? row.fullLoadTorqueNm : null;
  if (worst !== null && has.nm >= worst * share * MARGIN * (1 - DUST))
    return ok(
      { ...compared, need: worst * share },
      'Enough at the start, had the pump taken all that the failed motor was rated for.',
    );
  return leastNm === null
    ? toRead(
        compared,
        'What the pump asks at rest is not known in N·m.',
        'Shaft power and speed of the pump: its plate or curve',
        15,
      )
    : toRead(
        compared,
        'The losses between motor and pump are not known.',
        'Gear efficiency: the gear’s plate or its maker',
        15,
      );
}

/** Equal powers at full-load speeds a few per cent apart differ as much in torque: common practice, no source. */
const SAME_TORQUE = 0.95;
const LIKE = 'Like for like: common practice, no source';
