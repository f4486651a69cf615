import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { COLDEST_USUAL_C, USUAL_AMBIENT_C } from '@/lib/standards/ambient-altitude-factor';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { type Finding, note, ok, toJudge, toRead } from '../../finding';

/**
 * What ambient, altitude and unbalance leave of the rating; `power` judges the rest. Not asked when the set states none
 * of the three.
 */
export function temperatureAltitude(
  { surroundings: { ambientC, altitudeM }, supply }: PumpSet,
  candidate: Motor,
  { derating }: Context,
): Finding | null {
  if (ambientC === null && altitudeM === null && supply.unbalancePct === null) return null;
  const platedC = candidate.ambientC ?? USUAL_AMBIENT_C;
  const compared = {
    criterion: 'temperature-altitude',
    have: platedC,
    need: ambientC,
    unit: ambientC === null ? null : '°C',
    cite: derating.parts[0]?.cite ?? CITE,
  } as const;
  const plate =
    candidate.ambientC === null ? ` No ambient on the plate: taken as the usual ${USUAL_AMBIENT_C} °C.` : '';
  if (candidate.ambientC === null && ambientC !== null && ambientC > USUAL_AMBIENT_C)
    return toRead(
      { ...compared, have: null },
      `Warmer than the usual ${USUAL_AMBIENT_C} °C, and the plate read shows no ambient: power is judged as if made for ${USUAL_AMBIENT_C} °C.`,
      'Read the ambient on the motor plate',
      2,
    );
  if (derating.isUnknown)
    return toJudge(compared, `No table tells what these surroundings leave of the rating.${plate}`);
  if (ambientC !== null && ambientC < Math.min(COLDEST_USUAL_C, platedC))
    return toJudge(compared, `Colder than the usual −15 °C: grease, fan and heater need a look.${plate}`);
  if (derating.factor >= 1) return ok(compared, `Full output in these surroundings.${plate}`);
  let reasons = '';
  for (const { what, factor } of derating.parts) reasons += `${reasons === '' ? '' : ', '}${what} ${figure(factor)}`;
  return note(compared, `Derated to ${figure(100 * derating.factor, 0)} % of the rating (${reasons}).${plate}`);
}

const CITE = 'NEMA MG 1 14.2.1, IEC 60034-1 6: 40 °C and 1000 m (read in two texts)';
