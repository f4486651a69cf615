import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { USUAL_ALTITUDE_M } from '@/lib/standards/ambient-altitude-factor';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { drivenLoadOf, failedRowOf } from '../context/driven-load';
import { ratedNmOf } from '../context/rated-nm';
import { block, type Compared, type Finding, note, ok, toJudge, toRead } from '../finding';
import { torqueOverRange } from '../on-drive/torque-over-range';

/**
 * Does the rated torque carry the load at every speed asked? N·m at the motor shaft. Not asked of a quadratic load on the
 * mains, where power says it, nor while the load is unknown.
 */
export function carriesLoad(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { row, derating } = context;
  const load = drivenLoadOf(set);
  const isDriveFed = set.supply.start === 'drive';
  if (set.load.kind === null || load.losslessNm === null) return null;
  if (set.load.kind === 'quadratic' && !isDriveFed) return null;

  const need = neededNm(context, load.torqueNm ?? load.losslessNm);
  const ratedNm = ratedNmOf(row);
  if (ratedNm === null)
    return toRead(
      { criterion: 'torque', have: null, need, unit: 'N·m', cite: CITE },
      'Rated torque unknown.',
      'Rated power and full-load speed on the motor plate',
      5,
    );
  const available = ratedNm * derating.factor;
  const pu = isDriveFed ? speedPuOf(context, load.motorRpm) : 1;
  const compared = { criterion: 'torque', have: available / Math.max(1, pu), need, unit: 'N·m', cite: CITE } as const;
  const found =
    atSetSpeed(set, context, compared, compared.have, need) ??
    (isDriveFed ? torqueOverRange(set, candidate, row, pu, compared, available, need) : null) ??
    ok(compared, `Loaded to ${figure((100 * need) / compared.have, 0)} % of rated torque.`);
  return load.torqueNm === null && found.grade === 'ok' ? throughGear(set, ratedNm, compared, found) : found;
}

const CITE = 'Torque = 9550 × kW / rpm (read in two texts)';
/** Beyond what a plate and a pump curve tell apart: common practice, no source. */
const NEARLY = 1.02;
const EXACTLY = 1 + 1e-9;

/** Speed set in the drive over base; without a solved point by the speed asked. 1 where neither tells. */
function speedPuOf({ row, point }: Context, askedRpm: number | null): number {
  const { hertz } = point.restored ?? point;
  if (hertz !== null && row.hertz !== null) return hertz / row.hertz;
  return askedRpm === null || row.rpm === null ? 1 : askedRpm / row.rpm;
}

/** Torque at the speed it runs at; as the set tells it where no point is solved or the losses are unknown. */
function neededNm({ row, point }: Context, toldNm: number): number {
  const { torquePct } = point.restored ?? point;
  return torquePct === null || row.fullLoadTorqueNm === null ? toldNm : (torquePct * row.fullLoadTorqueNm) / 100;
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
    const says = `At this voltage it pulls ${figure(weakened)} N·m at rated slip: it slips more and runs hotter.`;
    return note({ ...compared, cite: VOLTAGE }, says);
  }
  if (share <= NEARLY * EXACTLY)
    return toJudge(
      compared,
      `Loaded to ${figure(100 * share, 1)} % of rated torque, over by less than 2 %: measure the load before deciding.`,
    );
  const isHigh = surroundings.altitudeM !== null && surroundings.altitudeM > USUAL_ALTITUDE_M;
  const mayUseFactor = supply.start !== 'drive' && row.kind === 'plated' && !isHigh && !derating.isUnknown;
  if (mayUseFactor && share <= row.serviceFactor * EXACTLY)
    return toJudge(
      compared,
      `Loaded to ${figure(100 * share, 0)} % of rated torque: that uses its service factor of ${row.serviceFactor}.`,
    );
  return block(compared, `The load asks ${figure(100 * share, 0)} % of the rated torque.`);
}

const VOLTAGE = 'NEMA MG 1 9.9 and 12.44: torque varies with the square of the voltage (read in one text)';

/** The losses between are unknown: no weaker than the failed motor passes. */
function throughGear(set: PumpSet, ratedNm: number, compared: Compared, found: Finding): Finding {
  const failedRow = failedRowOf(set);
  const failedNm = failedRow === null ? null : ratedNmOf(failedRow);
  const like = { ...compared, cite: LIKE_FOR_LIKE };
  if (failedNm !== null && ratedNm >= failedNm * SAME_TORQUE)
    return {
      ...found,
      cite: LIKE_FOR_LIKE,
      says: 'No weaker than the failed motor; the losses between are not known.',
    };
  return toRead(
    like,
    'Enough for the pump alone; the losses between motor and pump are not known.',
    'Efficiency of the gear: the gear’s plate or its maker',
    15,
  );
}

/** Equal powers at full-load speeds a few per cent apart differ as much in torque: common practice, no source. */
const SAME_TORQUE = 0.95;
const LIKE_FOR_LIKE = 'Like for like: common practice, no source';
