import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { drivenLoadOf } from '../context/driven-load';
import { nominalSpeedOf } from '../context/nominal-speed';
import { flowTolerancePct } from '../context/operating-point';
import { block, type Compared, type Finding, needsWork, ok, toJudge, toRead } from '../finding';
import { joined } from '../joined';
import { limitHertz, TOO_FAST } from './limit-hertz';
import { byFrequency, bySheave } from './put-right';
import { changeSheave, lowerLimit, scaleFrequency, setFrequency } from './speed-work';
import { againstStaticHead } from './static-head';

/** No operating point: full-load speed against the speed asked, nominal against nominal, at the motor's shaft. */
export function byPlate(set: PumpSet, candidate: Motor, context: Context, cite: string): Finding {
  const { row, point, settings } = context;
  const { haveRpm, needRpm, changePct, isSlipKnown } = nominalSpeedOf(set, row);
  const compared: Compared = { criterion: 'speed', have: haveRpm, need: needRpm, unit: 'rpm', cite };
  if (haveRpm === null)
    return toRead(compared, `Speed unknown. ${point.why}`, 'Full-load speed, poles and hertz on the motor plate', 5);
  if (needRpm === null || changePct === null)
    return toRead(
      compared,
      'Nothing tells the speed the pump needs.',
      'Pump speed and ratio: pump, gear or sheaves',
      15,
    );
  const by = figure(Math.abs(changePct), 1);
  const says = `By the plate it runs ${by === '0' ? 'as fast as' : `${by} % ${changePct < 0 ? 'slower' : 'faster'} than`} asked.`;
  // Shaft to shaft, another number of poles is out whatever the load does.
  const isFixed = set.supply.start !== 'drive' && set.coupling.type !== 'belt';
  if (point.isBeyond && !(isFixed && Math.abs(changePct) > flowTolerancePct(set)))
    return toJudge(compared, `${point.why}`);
  if (Math.abs(changePct) > flowTolerancePct(set) || isTooFast(set, haveRpm, changePct, isSlipKnown))
    return unlike(set, candidate, context, compared, says, needRpm / haveRpm);
  if (set.supply.start !== 'drive' && candidate.maxRpm !== null && haveRpm > candidate.maxRpm)
    return block({ ...compared, need: candidate.maxRpm }, aboveOwn(haveRpm, candidate.maxRpm));
  const hertz = limitHertz(set, candidate, row);
  const limit = hertz === null ? null : needsWork(compared, TOO_FAST, lowerLimit(settings, hertz));
  return joined(
    limit,
    isSlipKnown ? (againstStaticHead(set, compared, changePct) ?? ok(compared, says)) : slipUnknown(compared),
  ) as Finding;
}

/** What is said of a motor that would turn faster than its plate lets it. */
export const aboveOwn = (rpm: number, maxRpm: number): string =>
  `The motor would run at ${figure(rpm, 0)} rpm, above its own maximum of ${figure(maxRpm, 0)} rpm.`;

const slipUnknown = (compared: Compared): Finding =>
  toRead(
    compared,
    'The plates do not tell the slip, and so speed and flow are unknown.',
    'Full-load speed in the maker’s sheet, or by a tachometer on a running one',
    20,
  );

/** By the plate, which on a drive says nothing of the frequency it is run at. */
function isTooFast(set: PumpSet, haveRpm: number, changePct: number, isSlipKnown: boolean): boolean {
  const { ratio, pumpRpm } = drivenLoadOf(set);
  const { maxPumpRpm } = set.load;
  if (maxPumpRpm === null || !isSlipKnown) return false;
  const atPump =
    set.supply.start !== 'drive'
      ? ratio === null
        ? null
        : haveRpm / ratio
      : pumpRpm === null
        ? null
        : pumpRpm * (1 + changePct / 100);
  return atPump !== null && atPump > maxPumpRpm * EXACTLY;
}

const EXACTLY = 1 + 1e-9;

function unlike(
  set: PumpSet,
  candidate: Motor,
  { settings, row }: Context,
  compared: Compared,
  says: string,
  scale: number,
): Finding {
  if (set.supply.start !== 'drive')
    return set.coupling.type === 'belt'
      ? bySheave(set, compared, says, changeSheave(set, settings, scale))
      : block(compared, says);
  const { motorRpm } = drivenLoadOf(set);
  const base = row.rpm ?? row.synchronousRpm;
  if (row.hertz === null || motorRpm === null || base === null)
    return toJudge(compared, `${says} The drive must be set anew.`, scaleFrequency(settings, scale));
  const hertz = (row.hertz * motorRpm) / base;
  const work = setFrequency(settings, hertz, limitHertz(set, candidate, row));
  return byFrequency(set, compared, says, work, hertz, row.hertz);
}
