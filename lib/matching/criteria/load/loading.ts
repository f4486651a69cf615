import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { partLoad } from '@/lib/standards/part-load';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { type Finding, note, ok } from '../../finding';

/** Below this a smaller motor is worth a look: common practice, no source; designed for 50 to 100 % (DOE fact sheet). */
const OVERSIZED_BELOW_PCT = 40;

/**
 * Is the motor far too large? Per cent of rated power at duty; on a drive of rated torque, since power falls with speed.
 * Not asked while the load is unknown.
 */
export function loading(set: PumpSet, candidate: Motor, { row, point }: Context): Finding | null {
  const { loadPct: powerPct, torquePct, motorKw, amps } = point.restored ?? point;
  const loadPct = set.supply.start === 'drive' ? torquePct : powerPct;
  if (loadPct === null || motorKw === null || row.kw === null) return null;
  const compared = { criterion: 'loading', have: loadPct, need: OVERSIZED_BELOW_PCT, unit: '%', cite: CITE } as const;
  if (loadPct >= OVERSIZED_BELOW_PCT) return ok(compared, `Loaded to ${figure(loadPct, 0)} %.`);

  const ratio = partLoad(row.kw, loadPct / 100);
  const efficiency =
    ratio === null
      ? 'its efficiency far below its best'
      : `its efficiency about ${figure(100 * (1 - ratio), 0)} % below its best`;
  const ratedPct = row.plate?.efficiencyPct ?? null;
  const pf =
    ratio === null || ratedPct === null || amps === null || row.volts === null || set.supply.start === 'drive'
      ? null
      : (motorKw * 1000) / ((candidate.phases === 1 ? 1 : Math.sqrt(3)) * row.volts * amps * (ratio * ratedPct) * 0.01);
  const factor = pf === null || pf > 1 ? 'its power factor low' : `its power factor about ${figure(pf)}`;
  return note(compared, `Oversized: loaded to ${figure(loadPct, 0)} %, ${efficiency}, ${factor}.`);
}

const CITE = 'US DOE fact sheet, Determining Electric Motor Load and Efficiency, Figure 1 (read in one text)';
