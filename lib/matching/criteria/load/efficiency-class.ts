import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { levelReached } from '@/lib/standards/nominal-efficiency';
import { partLoad } from '@/lib/standards/part-load';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { failedRowOf } from '../../context/driven-load';
import { failedPointOf, type Running } from '../../context/operating-point';
import type { RatingRow } from '../../context/rating-row';
import { type Finding, note } from '../../finding';

const HOURS_UNTOLD = 1000;

/**
 * What a year with this motor costs in energy against the failed one: a note, whichever way. Each motor's own load at its
 * own speed, its plated efficiency carried to that load. Not asked unless both plates show an efficiency.
 */
export function efficiencyClass(set: PumpSet, candidate: Motor, { row, point, settings }: Context): Finding | null {
  const have = row.plate?.efficiencyPct ?? null;
  const failedRow = failedRowOf(set);
  const need = failedRow?.plate?.efficiencyPct ?? null;
  const failedPoint = failedPointOf(set);
  if (have === null || need === null || failedRow === null || failedPoint === null) return null;

  const compared = { criterion: 'efficiency-class', have, need, unit: '%', cite: CITE } as const;
  const inputKw = inputKwOf(row, point.restored ?? point, have);
  const failedKw = inputKwOf(failedRow, failedPoint.restored ?? failedPoint, need);
  const level = levelOf(candidate, row, have);
  const plated = `${figure(have, 1)} %${level === null ? '' : ` (${level} level)`} against the failed motor’s ${figure(need, 1)} %`;
  if (inputKw === null || failedKw === null)
    return note(compared, `${plated}; the load is not known, or too low for a figure in kWh.`);

  const hours = settings.hoursPerYear ?? HOURS_UNTOLD;
  const kwh = (inputKw - failedKw) * hours;
  const per = settings.hoursPerYear === null ? `in ${HOURS_UNTOLD} h` : 'a year';
  if (Math.abs(kwh) < 0.5) return note(compared, `${plated}: no difference in energy.`);
  const money =
    settings.pricePerKwh === null
      ? ''
      : ` (${figure(Math.abs(kwh) * settings.pricePerKwh, 0)}${settings.currency === null ? '' : ` ${settings.currency}`})`;
  return note(
    compared,
    `${plated}: ${figure(Math.abs(kwh), 0)} kWh ${kwh < 0 ? 'less' : 'more'} ${per}${money}${against(have - need, kwh)}.`,
  );
}

const CITE = 'IEC 60034-30-1, NEMA MG 1 12.59: nominal against nominal; DOE fact sheet (part load, read in one text)';

/** Why a year can go against the plates: only speed and load are left to do it. */
function against(betterPct: number, moreKwh: number): string {
  if (betterPct >= 0 && moreKwh > 0) return ': it would run faster, or further from its best load';
  return betterPct <= 0 && moreKwh < 0 ? ': it would run slower, or nearer its best load' : '';
}

function inputKwOf({ kw }: RatingRow, { motorKw, loadPct }: Running, efficiencyPct: number): number | null {
  if (motorKw === null || loadPct === null || kw === null) return null;
  const ratio = partLoad(kw, loadPct / 100);
  return ratio === null ? null : (100 * motorKw) / (efficiencyPct * ratio);
}

/** Kept per row of a plate: looking it up in the tables is no work for every pair. */
const levels = new WeakMap<Rating, { level: string | null }>();

/** A mark belongs to the frequency it was given for: a re-rated motor has none. */
function levelOf(candidate: Motor, row: RatingRow, efficiencyPct: number): string | null {
  if (row.kind !== 'plated' || row.plate === null) return null;
  const known = levels.get(row.plate);
  if (known !== undefined) return known.level;
  const level = lookUp(candidate, row, efficiencyPct);
  levels.set(row.plate, { level });
  return level;
}

function lookUp(candidate: Motor, row: RatingRow, efficiencyPct: number): string | null {
  const hertz = row.plate?.hertz ?? null;
  const kw = row.plate?.kw ?? null;
  if (hertz === null || kw === null || candidate.poles === null) return null;
  if (candidate.enclosure === null) return null; // open and enclosed motors have their own limits at 60 Hz
  const build = candidate.enclosure === 'ODP' || candidate.enclosure === 'DP' ? 'open' : 'enclosed';
  return levelReached(efficiencyPct, kw, candidate.poles, hertz, build);
}
