import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { type DrivenLoad, drivenLoadOf } from '../../context/driven-load';
import { motorLineOf, rpmUnderLoad } from '../../context/motor-line';
import { nominalSpeedOf } from '../../context/nominal-speed';
import {
  flowTolerancePct,
  LIKE_FOR_LIKE_FLOW_PCT,
  OVERLOADED,
  plateTolerancePct,
  type Restored,
} from '../../context/operating-point';
import { block, type Compared, type Finding, needsWork, ok, toJudge, toRead, type Work } from '../../finding';
import { changeSheave, lowerLimit, setFrequency } from '../../put-speed-right';

/** Flow falls more than speed against a static head: below this the difference is lost in the plate's tolerance. */
const SLOWER_PCT = 2;

/** Does the pump keep its speed? Pump rpm where it can be told, else motor rpm. Flow follows speed. */
export function speed(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { row, point } = context;
  const load = drivenLoadOf(set);
  if (point.flowChangePct === null) return bySpeedOnThePlate(set, candidate, context, load);

  const have = point.pumpRpm ?? point.motorRpm;
  const compared = { criterion: 'speed', have, need: load.pumpRpm ?? load.motorRpm, unit: 'rpm', cite: CITE } as const;
  const change = point.flowChangePct;
  const by = `${figure(Math.abs(change), 1)} % ${change < 0 ? 'slower' : 'faster'}${granted(point.assumes)}`;
  const { maxPumpRpm } = set.load;
  const tooFast = maxPumpRpm !== null && point.pumpRpm !== null ? point.pumpRpm / maxPumpRpm - 1 : 0;

  if (maxPumpRpm !== null && load.pumpRpm !== null && load.pumpRpm > maxPumpRpm)
    return block({ ...compared, need: maxPumpRpm }, "The speed asked of the pump is above the pump's own maximum.");
  if (tooFast * 100 > plateTolerancePct(row) || Math.abs(change) > flowTolerancePct(set, row)) {
    const says =
      tooFast > 0 ? `The pump would run above its maximum of ${maxPumpRpm} rpm.` : `The pump would run ${by}.`;
    return point.restored === null
      ? block(compared, says)
      : putRight(set, candidate, context, compared, says, point.restored);
  }
  if (candidate.maxRpm !== null && point.motorRpm !== null && point.motorRpm > candidate.maxRpm)
    return block({ ...compared, need: candidate.maxRpm }, 'The motor would run above its own maximum speed.');
  if (tooFast > 0)
    return toJudge(
      compared,
      'The pump would run at its maximum speed, as near as a plate tells: measure it at the start.',
    );
  const limit = overLimit(set, candidate, context, load);
  if (limit !== null) return needsWork(compared, 'At its maximum frequency the drive would run it too fast.', limit);
  return slower(set, compared, change) ?? ok(compared, `The pump runs ${by}.`);
}

const CITE = 'NEMA MG 1 1.19, IEC 60034-1 (slip); flow follows speed: pump affinity law (read in two texts)';

const granted = (assumes: string | null): string => (assumes === null ? '' : ` (${assumes})`);

/** A sheave or a frequency brings the speed back: work, unless what it brings along needs a person or a look. */
function putRight(
  set: PumpSet,
  candidate: Motor,
  { settings, row }: Context,
  compared: Compared,
  says: string,
  { by, hertz, sheaveScale, motorRpm }: Restored,
): Finding {
  if (candidate.maxRpm !== null && motorRpm !== null && motorRpm > candidate.maxRpm)
    return block(compared, `${says} The motor cannot make it up: its own maximum is ${candidate.maxRpm} rpm.`);
  if (by === 'sheave' || hertz === null) return sheave(set, compared, says, changeSheave(set, settings, sheaveScale));
  return frequency(set, compared, says, setFrequency(settings, hertz), hertz, row.hertz);
}

function sheave(set: PumpSet, compared: Compared, says: string, work: Work): Finding {
  if (set.coupling.sheave.changeable === true)
    return needsWork(compared, `${says} A new motor sheave puts it right.`, work);
  const asked = 'See whether the motor sheave comes off and another size can be had';
  return { ...toRead(compared, `${says} Another motor sheave would put it right.`, asked, 10), work };
}

function frequency(
  { supply }: PumpSet,
  compared: Compared,
  says: string,
  work: Work,
  hertz: number,
  base: number | null,
): Finding {
  const { minHertz = null, maxHertz = null } = supply.drive ?? {};
  if (maxHertz !== null && hertz > maxHertz)
    return toJudge(
      compared,
      `${says} The frequency that puts it right is above the drive's limit of ${maxHertz} Hz.`,
      work,
    );
  if (minHertz !== null && hertz < minHertz)
    return toJudge(
      compared,
      `${says} The frequency that puts it right is below the drive's limit of ${minHertz} Hz.`,
      work,
    );
  if (base !== null && hertz > base)
    return toJudge(compared, `${says} The frequency that puts it right is above base: torque falls there.`, work);
  return needsWork(compared, `${says} Another frequency puts it right.`, work);
}

/** The work when the drive, at its limit, would run pump or motor too fast; null when not or when no limit is told. */
function overLimit(set: PumpSet, candidate: Motor, { row, settings }: Context, load: DrivenLoad): Work | null {
  const maxHertz = set.supply.start === 'drive' ? (set.supply.drive?.maxHertz ?? null) : null;
  const line = maxHertz === null ? null : motorLineOf(candidate, row);
  const torqueNm = load.torqueNm ?? load.losslessNm;
  if (maxHertz === null || line === null || torqueNm === null || load.motorRpm === null || load.exponent === null)
    return null;
  const rpm = rpmUnderLoad(line, maxHertz, torqueNm, load.motorRpm, load.exponent);
  const pumpMax =
    set.load.maxPumpRpm === null || load.pumpRpm === null ? null : (set.load.maxPumpRpm * load.motorRpm) / load.pumpRpm;
  const allowed = Math.min(pumpMax ?? Number.POSITIVE_INFINITY, candidate.maxRpm ?? Number.POSITIVE_INFINITY);
  const margin = 1 + plateTolerancePct(row) / 100;
  return rpm <= allowed * margin ? null : lowerLimit(settings, (maxHertz * allowed) / rpm);
}

/** A centrifugal pump against a static head loses more flow than speed. Null when that is no question. */
function slower({ load }: PumpSet, compared: Compared, changePct: number): Finding | null {
  if (load.kind !== 'quadratic' || changePct >= -SLOWER_PCT) return null;
  if (load.staticHeadPct === null)
    return toRead(
      compared,
      `The pump runs ${figure(-changePct, 1)} % slower, and the flow falls more than that against a static head.`,
      'Static head as a share of the total head, from levels and gauges',
      30,
    );
  // The most the flow can fall: a flat pump curve against static head s and friction. Common practice, no source.
  const s = load.staticHeadPct / 100;
  const left = (1 + changePct / 100) ** 2 - s;
  const worstPct = s >= 1 || left <= 0 ? 100 : 100 * (1 - Math.sqrt(left / (1 - s)));
  if (worstPct <= (load.flowTolerancePct ?? LIKE_FOR_LIKE_FLOW_PCT)) return null;
  return toJudge(
    compared,
    `The flow may fall by up to ${figure(worstPct, 0)} % against this static head: look at the pump curve.`,
  );
}

/** No operating point: full-load speed against the speed asked, nominal against nominal. */
function bySpeedOnThePlate(set: PumpSet, candidate: Motor, context: Context, load: DrivenLoad): Finding {
  const { row, point } = context;
  const { haveRpm, needRpm, changePct, isSlipKnown } = nominalSpeedOf(set, row);
  const compared = { criterion: 'speed', have: haveRpm, need: needRpm, unit: 'rpm', cite: CITE } as const;
  if (haveRpm === null)
    return toRead(compared, `Speed unknown. ${point.why}`, 'Full-load speed, poles and hertz on the motor plate', 5);
  if (needRpm === null || changePct === null)
    return toRead(
      compared,
      'Nothing tells the speed the pump needs.',
      'Pump speed and ratio: pump, gear or sheaves',
      15,
    );
  if (point.why === OVERLOADED) return toJudge(compared, OVERLOADED);

  const says = `${figure(Math.abs(changePct), 1)} % ${changePct < 0 ? 'slower' : 'faster'} by the plate.`;
  const pumpRpm = load.pumpRpm === null ? null : load.pumpRpm * (1 + changePct / 100);
  const isTooFast =
    set.load.maxPumpRpm !== null &&
    pumpRpm !== null &&
    pumpRpm > set.load.maxPumpRpm * (1 + plateTolerancePct(row) / 100);
  if (isTooFast || Math.abs(changePct) > flowTolerancePct(set, row))
    return unlikeOnThePlate(set, context, compared, says, needRpm / haveRpm);
  if (candidate.maxRpm !== null && haveRpm > candidate.maxRpm)
    return block({ ...compared, need: candidate.maxRpm }, 'The motor would run above its own maximum speed.');
  if (!isSlipKnown)
    return toJudge(compared, 'The plate shows no speed below synchronous: slip, and so speed and flow, are unknown.');
  return slower(set, compared, changePct) ?? ok(compared, says);
}

function unlikeOnThePlate(
  set: PumpSet,
  { settings, row }: Context,
  compared: Compared,
  says: string,
  scale: number,
): Finding {
  if (set.coupling.type === 'belt' && set.supply.start !== 'drive' && set.coupling.sheave.changeable !== false)
    return sheave(set, compared, says, changeSheave(set, settings, scale));
  if (set.supply.start === 'drive' && row.hertz !== null)
    return frequency(set, compared, says, setFrequency(settings, row.hertz * scale), row.hertz * scale, row.hertz);
  return block(compared, says);
}
