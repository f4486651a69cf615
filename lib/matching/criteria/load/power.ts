import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { USUAL_ALTITUDE_M } from '@/lib/standards/ambient-altitude-factor';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { deratingOf } from '../../context/derating';
import { drivenLoadOf, failedRowOf } from '../../context/driven-load';
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
  if (row.kw === null)
    return toRead(
      { criterion: 'power', have: null, need: load.motorKw, unit: 'kW', cite: CITE },
      'Rated power unknown.',
      'Rated hp or kW on the motor plate',
      5,
    );
  const have = row.kw * derating.factor;
  if (load.shaftKw === null) return againstFailed(set, candidate, context, have);

  // A gear's losses unknown: the power at the pump is the least the motor must give.
  const leastKw = point.pumpKw === null ? load.shaftKw : Math.max(load.shaftKw, point.pumpKw);
  if (load.efficiency === null) return throughGear(set, candidate, context, have, leastKw);
  const need = (point.restored ?? point).motorKw ?? load.shaftKw / load.efficiency;
  return graded(set, context, { criterion: 'power', have, need, unit: 'kW', cite: CITE }, have, need);
}

const CITE = 'NEMA MG 1 1.42 and 14.37 (service factor); IEC 60034-1 5 (rating)';

function graded(
  { supply, surroundings }: PumpSet,
  { row, derating }: Context,
  compared: Compared,
  have: number,
  need: number,
): Finding {
  const share = need / have;
  const loaded = `Loaded to ${figure(100 * share, 0)} % of ${figure(have)} kW${derating.factor < 1 ? ', derated' : ''}.`;
  if (derating.isUnknown && share <= NEARLY)
    return toJudge(compared, `${loaded} What the surroundings leave of the rating is not known.`);
  if (share <= EXACTLY) return ok(compared, loaded);
  if (share <= NEARLY) return toJudge(compared, `${loaded} Within 2 %: measure the load before deciding.`);
  const isHigh = surroundings.altitudeM !== null && surroundings.altitudeM > USUAL_ALTITUDE_M;
  const mayUseFactor = supply.start !== 'drive' && row.kind === 'plated' && !isHigh && !derating.isUnknown;
  if (mayUseFactor && share <= row.serviceFactor * EXACTLY)
    return toJudge(
      compared,
      `${loaded} That uses its service factor of ${row.serviceFactor}: hotter and shorter-lived.`,
    );
  return block(compared, `Overloaded: ${figure(need)} kW asked of ${figure(have)} kW.`);
}

/** Shaft power unknown: the failed motor's output is the measure. */
function againstFailed(set: PumpSet, candidate: Motor, { row, derating }: Context, have: number): Finding {
  const failedRow = failedRowOf(set);
  const failedKw = failedRow?.kw ?? null;
  const compared = { criterion: 'power', have, need: failedKw, unit: 'kW', cite: LIKE_FOR_LIKE } as const;
  const asked = 'Input power of a running sister set, or shaft power from the pump curve';
  if (set.failed === null || failedKw === null)
    return toJudge(compared, 'Neither shaft power nor the failed motor tells how much is needed.');
  if (derating.isUnknown) return toJudge(compared, 'What the surroundings leave of the rating is not known.');
  const need = failedKw * deratingOf(set, set.failed).factor;
  const isAsMuch =
    have >= need / EXACTLY || (row.kw !== null && isSamePower(row.kw, failedKw, have / need, row.kw / failedKw));
  if (isAsMuch)
    return ok({ ...compared, need }, 'As much as the failed motor gave; the shaft power itself is not known.');
  return toRead({ ...compared, need }, 'Less than the failed motor gave, and the shaft power is not known.', asked, 30);
}

const LIKE_FOR_LIKE = 'Like for like: common practice, no source; hp and kW pairs of 10 CFR 431';

function throughGear(set: PumpSet, candidate: Motor, context: Context, have: number, leastKw: number): Finding {
  if (leastKw > have * EXACTLY)
    return graded(set, context, { criterion: 'power', have, need: leastKw, unit: 'kW', cite: CITE }, have, leastKw);
  const finding = againstFailed(set, candidate, context, have);
  if (finding.grade === 'ok')
    return { ...finding, says: "As much as the failed motor gave; the gear's losses are not known." };
  const compared = { criterion: 'power', have, need: leastKw, unit: 'kW', cite: LIKE_FOR_LIKE } as const;
  return toRead(
    compared,
    `The pump takes ${figure(leastKw)} kW, and the gear's losses are not known.`,
    "Gear efficiency: the gear's plate or its maker",
    15,
  );
}
