import { contextOf } from '@/lib/matching/context';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { IE_CLASSES, type IeClass, type SiteSettings } from '@/lib/plant/site-settings';
import { partLoad } from '@/lib/standards/part-load';
import { classEfficiency } from './class-efficiency';
import { hoursRun } from './hours-run';
import { known, toldOr, unknown, type WorkedOut, workedOut } from './worked-out';
import { yearlyCost } from './yearly-cost';

/** What a motor of one class takes in a year at one load. */
export interface ClassCost {
  ieClass: IeClass;
  /** At that load, from the nominal full-load figure of the class. */
  efficiencyPct: WorkedOut;
  kwhPerYear: WorkedOut;
  moneyPerYear: WorkedOut;
}

export interface ClassCostsAtLoad {
  /** Of rated power. */
  loadPct: number;
  classes: readonly ClassCost[];
}

/** Loads at which makers print efficiencies, per cent of rated power (IEC 60034-1 and NEMA MG 1 data sheets: common practice). */
const LOADS_PCT = [25, 50, 75, 100] as const;

/** Loads that are shown alike are one. */
const SAME_PCT = 0.05;

/**
 * What a motor of this rating takes in a year at part load, in each class by its nominal figure: the full-load figure of
 * the class, carried to the load by the DOE fact sheet's Figure 1. All hours at that load. `atPct`: a load besides the
 * usual ones, in per cent of rated power; null: none.
 */
export function classCosts(
  set: PumpSet,
  motor: Motor,
  settings: SiteSettings,
  atPct: number | null,
): ClassCostsAtLoad[] {
  const { row } = contextOf(set, motor, { settings, asOf: null });
  const ratedKw = row.plate?.kw ?? null;
  const hertz = row.plate?.hertz ?? null;
  const isUsual = LOADS_PCT.some((one) => atPct !== null && Math.abs(one - atPct) < SAME_PCT);
  const loads = [...LOADS_PCT, ...(atPct === null || isUsual ? [] : [atPct])].sort((a, b) => a - b);
  return loads.map((loadPct) => ({
    loadPct,
    classes: IE_CLASSES.map((ieClass) =>
      costOf(ieClass, classEfficiency(ieClass, motor, ratedKw, hertz), ratedKw, loadPct, settings),
    ),
  }));
}

function costOf(
  ieClass: IeClass,
  rated: WorkedOut,
  ratedKw: number | null,
  loadPct: number,
  settings: SiteSettings,
): ClassCost {
  const efficiencyPct = atLoad(rated, ratedKw, loadPct);
  const ofRated = toldOr(ratedKw, 'rated power', 'The rated power is not known.');
  const inputKw = workedOut(
    { ofRated, efficiencyPct },
    (of) => (of.ofRated * loadPct) / of.efficiencyPct,
    'load over efficiency',
  );
  const asked = {
    inputKw,
    reactiveKvar: unknown('The power factor of a class is not printed.'),
    hoursPerYear: hoursRun(settings),
  };
  const { kwhPerYear, moneyPerYear } = yearlyCost(asked, settings);
  return { ieClass, efficiencyPct, kwhPerYear, moneyPerYear };
}

function atLoad(rated: WorkedOut, ratedKw: number | null, loadPct: number): WorkedOut {
  if (rated.value === null || ratedKw === null) return rated;
  // The curves are printed by rated input.
  const ratio = partLoad((100 * ratedKw) / rated.value, loadPct / 100);
  if (ratio === null) return unknown('Below a tenth of rated load no efficiency is printed anywhere.');
  return known(
    rated.value * ratio,
    `${rated.from}, carried to this load by the US DOE fact sheet, Figure 1 (read in one text)`,
  );
}
