import type { HoldAsked } from '@/lib/register/hold-asked';
import { isId } from '@/lib/register/is-id';
import { AIMS, CHECKS, FITS, SOURCES } from '@/lib/spares/hold/hold-options';
import type { Refusal } from '@/lib/spares/hold/refusal';
import { readNumber } from '@/lib/units/read-number';
import type { Query } from '../lists/asked-for';

export const AIM_WORDS = {
  fewest: 'fewest different motors',
  cheapest: 'least to pay for them',
  'cheapest-with-work': 'least to pay, work at the pumps counted',
} as const satisfies Record<(typeof AIMS)[number], string>;
export const SOURCE_WORDS = {
  both: 'shelf and what could be bought',
  shelf: 'shelf alone',
  buy: 'bought alone',
} as const;
export const FIT_WORDS = { 'straight-swap': 'straight swap only', 'swap-with-work': 'with work too' } as const;
export const CHECK_WORDS = {
  none: 'nothing to be checked',
  readings: 'readings counted',
  all: 'every check counted',
} as const;
export const REFUSAL_WORDS: Record<Refusal, string> = {
  source: 'not from there',
  work: 'needs work',
  hours: 'too many hours',
  checks: 'to be checked first',
  lead: 'too many days, or not told',
  price: 'no price',
};
export const CHANCES = [90, 95, 99] as const;
export const SECONDS = [2, 5, 20] as const;

const text = (query: Query, name: string): string => {
  const value = query[name];
  return (Array.isArray(value) ? value.join(',') : (value ?? '')).trim().slice(0, 4_000);
};
const among = <const T extends string>(values: readonly T[], told: string, first: T): T =>
  values.find((value) => value === told) ?? first;
function figure(told: string, max: number): number | null {
  const read = told === '' ? null : readNumber(told, { min: 0, max });
  return read?.ok ? read.value : null;
}

/** What the address asks. What is not told stands as the form shows it. */
export function holdAsked(query: Query, workPerHour: number | null): HoldAsked {
  const of = (name: string) => text(query, name);
  const area = of('area');
  const chance = CHANCES.find((one) => String(one) === of('chance')) ?? 95;
  const [hours, years, prior] = [figure(of('hours'), 200), figure(of('years'), 40), figure(of('prior'), 10_000)];
  return {
    sets: {
      q: of('q') === '' ? null : of('q').slice(0, 200),
      areaId: isId(area) ? area : null,
      criticality: figure(of('criticality'), 4),
      tags: of('tags')
        .split(/[\s,;]+/)
        .filter((tag) => tag !== ''),
    },
    options: {
      aim: among(AIMS, of('aim'), 'fewest'),
      from: among(SOURCES, of('from'), 'both'),
      fit: among(FITS, of('fit'), 'swap-with-work'),
      mostHours: hours === null ? 4 : hours,
      checks: among(CHECKS, of('checks'), 'none'),
      mostLeadDays: figure(of('lead'), 1_000),
      perHour: figure(of('perHour'), 100_000) ?? workPerHour,
      years: years === null ? 10 : years,
    },
    price: { each: figure(of('each'), 1_000_000), perKw: figure(of('perKw'), 100_000) },
    days: figure(of('days'), 1_000),
    rate: of('rate') === '' ? 'survey-600-v' : of('rate'),
    priorYears: prior === null || prior === 0 ? 50 : prior,
    chance: chance / 100,
    seconds: SECONDS.find((one) => String(one) === of('seconds')) ?? 5,
  };
}
