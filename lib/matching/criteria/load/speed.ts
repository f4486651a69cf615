import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { drivenLoadOf } from '../../context/driven-load';
import { flowTolerancePct, LIKE_FOR_LIKE_FLOW_PCT } from '../../context/operating-point';
import { block, type Compared, type Finding, needsWork, ok } from '../../finding';
import { joined } from '../../joined';
import { aboveOwn, byPlate } from '../../speed/by-plate';
import { limitHertz, TOO_FAST } from '../../speed/limit-hertz';
import { byFrequency, bySheave } from '../../speed/put-right';
import { changeSheave, lowerLimit, setFrequency } from '../../speed/speed-work';
import { againstStaticHead } from '../../speed/static-head';

/** Does the pump keep its speed? Pump rpm where it can be told, else motor rpm. Flow follows speed. */
export function speed(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { point, row, settings } = context;
  const load = drivenLoadOf(set);
  const { maxPumpRpm } = set.load;
  const have = point.pumpRpm ?? point.motorRpm;
  const compared: Compared = {
    criterion: 'speed',
    have,
    need: load.pumpRpm ?? load.motorRpm,
    unit: 'rpm',
    cite: CITE,
  };
  if (maxPumpRpm !== null && load.pumpRpm !== null && load.pumpRpm > maxPumpRpm)
    return block(
      { ...compared, need: maxPumpRpm },
      `The pump is asked for ${figure(load.pumpRpm, 0)} rpm, above its own maximum of ${figure(maxPumpRpm, 0)} rpm.`,
    );
  if (point.flowChangePct === null)
    return point.restored === null
      ? byPlate(set, candidate, context, CITE)
      : putRight(set, candidate, context, compared, `${point.why}`);

  const change = point.flowChangePct;
  const isOut = Math.abs(change) > flowTolerancePct(set);
  const says = `${keeps(change)}${isOut ? allowed(set) : ''}${granted(set, point.assumes)}.`;
  const isTooFast = maxPumpRpm !== null && point.pumpRpm !== null && point.pumpRpm > maxPumpRpm * EXACTLY;
  if (isTooFast || isOut)
    return putRight(
      set,
      candidate,
      context,
      isTooFast ? { ...compared, need: maxPumpRpm } : compared,
      isTooFast ? `${says} The pump’s maximum is ${maxPumpRpm} rpm.` : says,
    );
  if (candidate.maxRpm !== null && point.motorRpm !== null && point.motorRpm > candidate.maxRpm * EXACTLY)
    return block({ ...compared, need: candidate.maxRpm }, aboveOwn(point.motorRpm, candidate.maxRpm));

  const slower = againstStaticHead(set, compared, change) ?? ok(compared, says);
  const hertz = limitHertz(set, candidate, row);
  if (hertz === null) return slower;
  return joined(slower, needsWork(compared, TOO_FAST, lowerLimit(settings, hertz)));
}

const CITE = 'NEMA MG 1 1.19, IEC 60034-1 (slip); flow follows speed: pump affinity law (read in two texts)';
const EXACTLY = 1 + 1e-9;

function keeps(changePct: number): string {
  const by = figure(Math.abs(changePct), 1);
  return by === '0' ? 'The pump keeps its speed' : `The pump runs ${by} % ${changePct < 0 ? 'slower' : 'faster'}`;
}

/** What a tolerance that was stated lets the speed change by; one taken for granted says so itself. */
const allowed = ({ load: { flowTolerancePct: pct } }: PumpSet): string =>
  pct === null ? '' : `, more than the ${figure(pct, 1)} % allowed`;

const granted = ({ load }: PumpSet, assumes: string | null): string => {
  const tolerance =
    load.flowTolerancePct === null
      ? `no tolerance stated, ${LIKE_FOR_LIKE_FLOW_PCT} % taken: common practice, no source`
      : null;
  if (assumes === null && tolerance === null) return '';
  return ` (${assumes === null ? '' : assumes}${assumes !== null && tolerance !== null ? '; ' : ''}${tolerance ?? ''})`;
};

/** A sheave or a frequency brings the speed back; where neither can, the motor is out. */
function putRight(
  set: PumpSet,
  candidate: Motor,
  { settings, row, point }: Context,
  compared: Compared,
  says: string,
): Finding {
  if (point.restored === null) return block(compared, says);
  const { by, hertz, sheaveScale, motorRpm } = point.restored;
  if (candidate.maxRpm !== null && motorRpm !== null && motorRpm > candidate.maxRpm * EXACTLY)
    return block(compared, `${says} The motor cannot make it up: its own maximum is ${candidate.maxRpm} rpm.`);
  if (by === 'sheave' || hertz === null) return bySheave(set, compared, says, changeSheave(set, settings, sheaveScale));
  const work = setFrequency(settings, hertz, limitHertz(set, candidate, row));
  return byFrequency(set, compared, says, work, hertz, row.hertz);
}
