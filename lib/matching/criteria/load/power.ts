import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { USUAL_ALTITUDE_M } from '@/lib/standards/ambient-altitude-factor';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { deratingOf } from '../../context/derating';
import { drivenLoadOf, failedRowOf } from '../../context/driven-load';
import type { RatingRow } from '../../context/rating-row';
import { block, type Compared, type Finding, ok, toJudge, toRead } from '../../finding';
import { isSamePower } from '../../same-power';

/** Beyond what a plate and a pump curve tell apart: common practice, no source. */
const NEARLY = 1.02;
/** Clears binary dust: a motor loaded exactly to its plate is not overloaded. */
const EXACTLY = 1 + 1e-9;

/** Can the motor carry the load continuously? kW at the motor shaft against the rating the surroundings leave. */
export function power(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { row, derating, point } = context;
  const load = drivenLoadOf(set);
  if (row.kw === null) return ratingUnknown(candidate, row, load.motorKw);
  const have = row.kw * derating.factor;
  if (load.shaftKw === null) return againstFailed(set, context, have);

  const running = point.restored ?? point;
  if (load.efficiency === null) return throughGear(set, context, have, running.pumpKw ?? load.shaftKw);
  const need = running.motorKw ?? load.shaftKw / load.efficiency;
  return graded(set, context, { criterion: 'power', have, need, unit: 'kW', cite: CITE }, have, need);
}

const CITE = 'NEMA MG 1 1.42 and 14.37 (service factor); IEC 60034-1 5 (rating)';

function ratingUnknown({ ratings }: Motor, { plate, kind }: RatingRow, need: number | null): Finding {
  const compared: Compared = { criterion: 'power', have: null, need, unit: 'kW', cite: CITE };
  if (kind === 're-rated' && plate !== null && plate.kw !== null)
    return toJudge(compared, 'What it gives at this frequency and voltage is in no table.');
  if (plate === null && ratings.length > 0)
    return toRead(
      compared,
      'Which rating on the plate serves this supply is unknown, and so its power.',
      'Supply volts and hertz at the starter; volts and hertz of each rating on the plate',
      10,
    );
  return toRead(compared, 'Rated power unknown.', 'Rated hp or kW on the motor plate', 5);
}

function graded(
  { supply, surroundings }: PumpSet,
  { row, derating }: Context,
  compared: Compared,
  have: number,
  need: number,
): Finding {
  const share = need / have;
  const isNear = share > EXACTLY && share <= NEARLY * EXACTLY;
  const given = `${figure(have)} kW${derating.factor < 1 ? ', derated' : ''}`;
  const loaded = `Loaded to ${figure(100 * share, isNear ? 1 : 0)} % of ${given}.`;
  if (derating.isUnknown && share <= NEARLY * EXACTLY)
    return toJudge(compared, `${loaded} What the surroundings leave of the rating is not known.`);
  if (share <= EXACTLY) return ok(compared, loaded);
  if (isNear) return toJudge(compared, `${loaded} That is over by less than 2 %: measure the load before deciding.`);
  const isHigh = surroundings.altitudeM !== null && surroundings.altitudeM > USUAL_ALTITUDE_M;
  const mayUseFactor = supply.start !== 'drive' && row.kind === 'plated' && !isHigh && !derating.isUnknown;
  if (mayUseFactor && share <= row.serviceFactor * EXACTLY)
    return toJudge(
      compared,
      `${loaded} That uses its service factor of ${row.serviceFactor}: hotter and shorter-lived.`,
    );
  return block(compared, `Overloaded: ${figure(need)} kW asked of ${given}.`);
}

/** Shaft power unknown: the failed motor's output is the measure. */
function againstFailed(set: PumpSet, { row, derating }: Context, full: number): Finding {
  const failedRow = failedRowOf(set);
  const failedKw = failedRow?.kw ?? null;
  const compared: Compared = { criterion: 'power', have: full, need: failedKw, unit: 'kW', cite: LIKE_FOR_LIKE };
  if (set.failed === null || failedRow === null || failedKw === null)
    return toRead(compared, 'Neither shaft power nor the failed motor tells how much is needed.', ASK_LOAD, 30);
  if (derating.isUnknown) return toJudge(compared, 'What the surroundings leave of the rating is not known.');
  const slowed = slowedTo(set, row, failedRow);
  const have = full * slowed;
  const need = failedKw * deratingOf(set, set.failed).factor;
  const both: Compared = { ...compared, have, need };
  const isAsMuch = have * EXACTLY >= need || (row.kw !== null && isSamePower(row.kw * slowed, failedKw, have / need));
  if (isAsMuch) return ok(both, 'As much as the failed motor gave; the shaft power itself is not known.');
  return toRead(
    both,
    `${figure(have)} kW is less than the ${figure(need)} kW the failed motor gave, and the shaft power is not known.`,
    ASK_LOAD,
    30,
  );
}

const LIKE_FOR_LIKE = 'Like for like: common practice, no source; hp and kW pairs of 10 CFR 431';
const ASK_LOAD = 'Input power of a running sister set, or shaft power from the pump curve';

/**
 * A drive runs a motor of fewer poles slower to make the failed one's speed, and it gives that much less. On the mains,
 * and between motors of the same poles, 1.
 */
function slowedTo({ supply }: PumpSet, row: RatingRow, failedRow: RatingRow): number {
  if (supply.start !== 'drive' || row.synchronousRpm === null || failedRow.synchronousRpm === null) return 1;
  return Math.min(1, failedRow.synchronousRpm / row.synchronousRpm);
}

/** The losses between are unknown: no smaller than the failed motor passes, unless the pump alone asks too much. */
function throughGear(set: PumpSet, context: Context, have: number, leastKw: number): Finding {
  const compared: Compared = { criterion: 'power', have, need: leastKw, unit: 'kW', cite: LIKE_FOR_LIKE };
  if (leastKw > have * EXACTLY)
    return block(
      { ...compared, cite: CITE },
      `Overloaded: the pump takes ${figure(leastKw)} kW of ${figure(have)} kW, before any losses.`,
    );
  const likeForLike = againstFailed(set, context, have);
  if (likeForLike.grade === 'ok')
    return { ...likeForLike, says: 'As much as the failed motor gave; the losses between are not known.' };
  return toRead(
    compared,
    `The pump takes ${figure(leastKw)} kW; the losses between motor and pump are not known.`,
    'Efficiency of the gear: the gear’s plate or its maker',
    15,
  );
}
