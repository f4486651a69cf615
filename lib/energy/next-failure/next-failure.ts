import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { CRITICALITIES, type IeClass, type SiteSettings } from '@/lib/plant/site-settings';
import { REWIND_BY_GOOD_PRACTICE } from '@/lib/standards/tables/rewind-effect';
import { figure } from '@/lib/units/figure';
import { type LifeCycleCost, lifeCycleCost } from '../life-cycle-cost';
import { noRange, type Range, rangeOf, rangeOfBoth } from '../range';
import type { RunningAtDuty } from '../running-at-duty';
import { runningOf } from '../running-of';
import { unknown, type WorkedOut, workedOut } from '../worked-out';
import { downUntilBought, downUntilRepaired, downWithShelf } from './hours-down';
import { efficiencyInClass, withEfficiency } from './with-efficiency';

/** A motor that could stand in the set, as it was judged. */
export interface Alternative {
  motor: Motor;
  /** Of work, by its findings; null: not judged. */
  hours: number | null;
  /** What it costs; null: not told, or paid long ago. */
  price: number | null;
}

export interface Alternatives {
  /** Those that could go in tonight, best first. */
  onShelf: readonly Alternative[];
  /** Standard ratings that could be bought, each once: a row is made for each class. Prices by class where told. */
  toBuy: readonly (Omit<Alternative, 'price'> & { prices: Partial<Record<IeClass, number>> })[];
  /** What a repair of the motor there is costs; null: not told. */
  repairPrice: number | null;
}

export type Moment = 'tonight' | 'next-failure' | 'after-repair';

/** What the set takes from that moment on, and how long it stands until then. */
export interface NextFailureRow {
  moment: Moment;
  motor: Motor;
  /** Of a motor to be bought. */
  ieClass: IeClass | null;
  /** At full load, %. */
  ratedEfficiencyPct: Range;
  kwhPerYear: Range;
  moneyPerYear: Range;
  hoursDown: Range;
  /** What its shaft gives more than that of the motor there is, by its speed alone. */
  moreShaftKw: Range;
  /** kW that the pump asks more for each rpm that the motor turns faster: the speed of a motor to be bought is only asked for. */
  kwPerRpm: WorkedOut;
  /** Present value of it all: at the low end of energy and downtime, and at the high one. */
  lifeCycle: { low: LifeCycleCost; high: LifeCycleCost };
  notes: readonly string[];
}

export interface NextFailure {
  /** How the motor there is runs. */
  now: RunningAtDuty;
  rows: NextFailureRow[];
}

/** Classes that a motor is bought in. */
const BOUGHT: readonly IeClass[] = ['IE2', 'IE3', 'IE4'];

/**
 * What the set takes in a year and how long it stands still, tonight with what is on the shelf, at its next failure with a
 * bought motor of each class, and after a repair of its own motor. `criticality`: 1 stops the plant ... 4 can wait.
 */
export function nextFailure(
  set: PumpSet,
  motor: Motor,
  alternatives: Alternatives,
  settings: SiteSettings,
  criticality: number | null,
): NextFailure {
  const now = runningOf(set, motor, settings);
  const asked: Asked = { set, settings, now, downtimePerHour: downtimeOf(settings, criticality) };
  return {
    now,
    rows: [
      ...alternatives.onShelf.map((one) => tonight(asked, one)),
      ...alternatives.toBuy.flatMap((one) => BOUGHT.map((ieClass) => bought(asked, one, ieClass))),
      afterRepair(asked, motor, alternatives.repairPrice),
    ],
  };
}

interface Asked {
  set: PumpSet;
  settings: SiteSettings;
  now: RunningAtDuty;
  downtimePerHour: number | null;
}

/** Null: the site has not told it, or nobody said how critical the set is. */
function downtimeOf({ downtimePerHour }: SiteSettings, criticality: number | null): number | null {
  const known = CRITICALITIES.find((one) => one === criticality);
  return known === undefined ? null : downtimePerHour[known];
}

function tonight(asked: Asked, { motor, hours, price }: Alternative): NextFailureRow {
  const { set, settings } = asked;
  const running = runningOf(set, motor, settings);
  const row = { moment: 'tonight', motor, ieClass: null, hoursDown: downWithShelf(hours) } as const;
  return rowOf(asked, row, running, running, { purchase: price, workHours: hours }, []);
}

function bought(
  asked: Asked,
  { motor, hours, prices }: Alternatives['toBuy'][number],
  ieClass: IeClass,
): NextFailureRow {
  const { set, settings } = asked;
  const efficiency = efficiencyInClass(set, motor, ieClass);
  const asBought = withEfficiency(motor, efficiency.value);
  const running = asOfClass(runningOf(set, asBought, { ...settings, unprintedClass: null }), efficiency);
  const row = {
    moment: 'next-failure',
    motor: asBought,
    ieClass,
    hoursDown: downUntilBought(motor, hours, settings),
  } as const;
  return rowOf(asked, row, running, running, { purchase: prices[ieClass] ?? null, workHours: hours }, [
    'Reckoned at the full-load speed that is asked for: the one offered may be another.',
  ]);
}

/** The figure is that of the class, not of a plate; and where a class has none, that is why, not a plate that prints none. */
function asOfClass(running: RunningAtDuty, efficiency: WorkedOut): RunningAtDuty {
  if (efficiency.value !== null) return { ...running, ratedEfficiencyPct: efficiency };
  const needs = ['ratedEfficiencyPct', 'efficiencyPct', 'inputKw', 'lossesKw', 'kwhPerYear', 'moneyPerYear'] as const;
  return { ...running, ...Object.fromEntries(needs.map((key) => [key, efficiency])) };
}

function afterRepair(asked: Asked, motor: Motor, repairPrice: number | null): NextFailureRow {
  const { set, settings, now } = asked;
  const hours = settings.hours.swap;
  const { fromPts, toPts, cite } = REWIND_BY_GOOD_PRACTICE;
  const rated = now.ratedEfficiencyPct.value;
  const changed = (pts: number) =>
    rated === null ? now : runningOf(set, withEfficiency(motor, Math.min(100, rated + pts)), settings);
  const row = {
    ...({ moment: 'after-repair', motor, ieClass: null } as const),
    hoursDown: downUntilRepaired(motor.ratings.find(({ kw }) => kw !== null)?.kw ?? null, hours, settings),
  };
  return rowOf(asked, row, changed(toPts), changed(fromPts), { purchase: repairPrice, workHours: hours }, [
    `From ${figure(fromPts)} to +${figure(toPts)} points: ${cite}. A shop that nobody manages may cost 1 to 2 points.`,
    'The set stands while the motor is away; with a spare in its place it does not.',
  ]);
}

function rowOf(
  { set, settings, now, downtimePerHour }: Asked,
  row: Pick<NextFailureRow, 'moment' | 'motor' | 'ieClass' | 'hoursDown'>,
  best: RunningAtDuty,
  worst: RunningAtDuty,
  costs: { purchase: number | null; workHours: number | null },
  notes: readonly string[],
): NextFailureRow {
  const over = (key: Exclude<keyof RunningAtDuty, 'assumes'>, from: string): Range =>
    best === worst ? rangeOf(best[key]) : rangeOfBoth(best[key], worst[key], from);
  const moneyPerYear = over('moneyPerYear', 'energy × the site’s price of a kWh');
  const end = (side: 'low' | 'high'): LifeCycleCost =>
    lifeCycleCost({
      ...costs,
      ...{ energyPerYear: moneyPerYear[side], downHours: row.hoursDown[side], downtimePerHour },
      ...{ years: settings.lifeYears, discountRatePct: settings.discountRatePct, workPerHour: settings.workPerHour },
      energyPriceGrowthPct: settings.energyPriceGrowthPct,
    });
  return {
    ...row,
    ratedEfficiencyPct: over('ratedEfficiencyPct', 'that of the motor there is, changed by its rewinding'),
    kwhPerYear: over('kwhPerYear', 'input × hours run in a year'),
    moneyPerYear,
    moreShaftKw: moreShaft(now, best),
    kwPerRpm: kwPerRpm(set, best),
    lifeCycle: { low: end('low'), high: end('high') },
    notes,
  };
}

const moreShaft = (now: RunningAtDuty, then: RunningAtDuty): Range => {
  if (then === now) return rangeOf(workedOut({ loadKw: now.loadKw }, () => 0, 'the same motor'));
  if (now.loadKw.value === null) return noRange(now.loadKw.why);
  const more = workedOut(
    { was: now.loadKw, is: then.loadKw },
    (of) => of.is - of.was,
    'at its own speed, k of the load',
  );
  return rangeOf(more);
};

/** P follows n to the power k + 1, so a little faster takes (k + 1)·P/n for each rpm. */
function kwPerRpm(set: PumpSet, { loadKw, motorRpm }: RunningAtDuty): WorkedOut {
  const { exponent } = drivenLoadOf(set);
  if (exponent === null) return unknown('The kind of load is not told.');
  return workedOut(
    { loadKw, motorRpm },
    (of) => ((exponent + 1) * of.loadKw) / of.motorRpm,
    exponent === 2 ? 'centrifugal: power with the cube of speed' : 'constant torque: power with the speed',
  );
}
