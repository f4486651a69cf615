import type { HoldAsked, HoldProblem, HoldTicks } from '@/lib/register/hold-asked';
import { isId } from '@/lib/register/is-id';
import { AIMS, CHECKS, FITS, SOURCES } from '@/lib/spares/hold/hold-options';
import { readPriceList } from '@/lib/spares/hold/price-list';
import { readNumber } from '@/lib/units/read-number';
import type { Query } from '../lists/asked-for';
import { CHANCES, FIGURES, type FigureName, MOST_PRICE_SIGNS, SECONDS } from './hold-words';

/** What stands under a name in the address, as it was typed. */
export const typedOf = (query: Query, name: string): string => {
  const value = query[name];
  return Array.isArray(value) ? value.join(',') : value === undefined ? '' : value;
};

/** Every value under a name that can stand there many times. */
function allOf(query: Query, name: string): string[] {
  const value = query[name];
  return value === undefined ? [] : Array.isArray(value) ? value : [value];
}

const among = <const T extends string>(values: readonly T[], told: string, first: T): T =>
  values.find((value) => value === told) ?? first;

/** What the address asks. What is not told stands as the form shows it; what cannot be read is told in `unread`. */
export function holdAsked(query: Query, workPerHour: number | null): HoldAsked {
  const of = (name: string) => typedOf(query, name).trim().slice(0, 4_000);
  const unread: HoldProblem[] = [];
  const figure = (name: FigureName): number | null => {
    const told = of(name);
    if (told === '') return null;
    const { label, ...bounds } = FIGURES[name];
    const read = readNumber(told, bounds);
    if (read.ok) return read.value;
    for (const { value, says } of read.problems) unread.push({ path: name, says: `${label}: “${value}” ${says}.` });
    return null;
  };
  const area = of('area');
  const criticality = /^[1-4]$/.test(of('criticality')) ? Number(of('criticality')) : null;
  const chance = CHANCES.find((one) => String(one) === of('chance')) ?? 95;
  // In the order of the form, which is that of its problems.
  const [hours, lead, each, perKw] = [figure('hours'), figure('lead'), figure('each'), figure('perKw')];
  const [perHour, years, days, prior] = [figure('perHour'), figure('years'), figure('days'), figure('prior')];
  const list = pricesOf(typedOf(query, 'prices'), unread);
  return {
    sets: {
      q: of('q') === '' ? null : of('q').slice(0, 200),
      areaId: isId(area) ? area : null,
      criticality,
      tags: of('tags')
        .split(/[\s,;]+/)
        .filter((tag) => tag !== ''),
    },
    ticks: ticksOf(query),
    options: {
      aim: among(AIMS, of('aim'), 'fewest'),
      from: among(SOURCES, of('from'), 'both'),
      without: allOf(query, 'without'),
      fit: among(FITS, of('fit'), 'swap-with-work'),
      mostHours: hours === null ? 4 : hours,
      checks: among(CHECKS, of('checks'), 'none'),
      mostLeadDays: lead,
      perHour: perHour === null ? workPerHour : perHour,
      years: years === null ? 10 : years,
    },
    price: { list, each, perKw },
    days,
    rate: of('rate') === '' ? 'survey-600-v' : of('rate'),
    priorYears: prior === null ? 50 : prior,
    chance: chance / 100,
    seconds: SECONDS.find((one) => String(one) === of('seconds')) ?? 5,
    unread,
  };
}

function pricesOf(text: string, unread: HoldProblem[]) {
  const add = (says: string) => unread.push({ path: 'prices', says });
  if (text.length > MOST_PRICE_SIGNS) {
    add(`The price list has ${text.length} signs, and an address holds ${MOST_PRICE_SIGNS} of it: leave lines out.`);
    return [];
  }
  const { prices, problems } = readPriceList(text);
  for (const says of problems) add(`Price list, ${says.charAt(0).toLowerCase()}${says.slice(1)}`);
  return prices;
}

/** A button that ticks all or none goes before the boxes it stands above. */
function ticksOf(query: Query): HoldTicks {
  const pressed = typedOf(query, 'tick');
  if (pressed === 'all' || pressed === 'none') return pressed;
  const shown = typedOf(query, 'shown');
  if (shown === '') return 'all';
  return { shown, tags: allOf(query, 'set') };
}
