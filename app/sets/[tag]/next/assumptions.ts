import type { Query } from '@/app/lists/asked-for';
import { signedNumber } from '@/app/signed-number';
import type { IeClass, SiteSettings } from '@/lib/plant/site-settings';

/** One figure that the sums rest on: of the address, else of the site. */
export interface Assumption {
  name: string;
  label: string;
  /** `money` stands for the site's currency. */
  unit: string;
  value: number | null;
  from: 'address' | 'site' | 'nobody';
  /** What was typed; it may be no figure. */
  typed: string;
  error: string | null;
}

export interface Assumed {
  settings: SiteSettings;
  /** What a motor bought costs, by class. */
  prices: Partial<Record<IeClass, number>>;
  repairPrice: number | null;
  /** What a motor of the shelf counts for; 0: paid long ago. */
  shelfPrice: number | null;
  assumptions: readonly Assumption[];
}

interface Asked {
  name: string;
  label: string;
  unit: string;
  min: number;
  max: number;
  isWhole?: true;
  /** Null: the site has no such figure, or has not told it. */
  ofSite: number | null;
}

/** The figures of the address over those of the site. `criticality`: 1 stops the plant ... 4 can wait; null: not told. */
export function assumed(query: Query, site: SiteSettings, criticality: 1 | 2 | 3 | 4 | null): Assumed {
  const money = { unit: 'money', min: 0, max: 100_000_000 };
  const read = (asked: Asked) => assumptionOf(asked, query);
  const price = read({ name: 'price', label: 'Price of a kWh', ...money, max: 10, ofSite: site.pricePerKwh });
  const hours = read({
    name: 'hours',
    label: 'Hours run in a year',
    unit: 'h',
    min: 0,
    max: 8_784,
    ofSite: site.hoursPerYear,
  });
  const years = read({
    name: 'years',
    label: 'Years reckoned with',
    unit: 'years',
    min: 1,
    max: 40,
    isWhole: true,
    ofSite: site.lifeYears,
  });
  const discount = read({
    name: 'discount',
    label: 'Discount rate',
    unit: '% a year',
    min: 0,
    max: 50,
    ofSite: site.discountRatePct,
  });
  const growth = read({
    name: 'growth',
    label: 'The price of energy rises by',
    unit: '% a year',
    min: -20,
    max: 50,
    ofSite: site.energyPriceGrowthPct,
  });
  const work = read({ name: 'work', label: 'An hour of work costs', ...money, ofSite: site.workPerHour });
  const ofDown = criticality === null ? null : site.downtimePerHour[criticality];
  const down = read({ name: 'down', label: 'An hour down costs', ...money, ofSite: ofDown });
  const shelf = read({ name: 'shelf', label: 'A motor of the shelf counts for', ...money, ofSite: null });
  const ie2 = read({ name: 'ie2', label: 'A new motor of IE2 costs', ...money, ofSite: null });
  const ie3 = read({ name: 'ie3', label: 'A new motor of IE3 costs', ...money, ofSite: null });
  const ie4 = read({ name: 'ie4', label: 'A new motor of IE4 costs', ...money, ofSite: null });
  const repair = read({ name: 'repair', label: 'The repair costs', ...money, ofSite: null });
  return {
    settings: {
      ...site,
      ...{ pricePerKwh: price.value, hoursPerYear: hours.value, lifeYears: years.value, workPerHour: work.value },
      ...{ discountRatePct: discount.value, energyPriceGrowthPct: growth.value },
      downtimePerHour: { 1: down.value, 2: down.value, 3: down.value, 4: down.value },
    },
    prices: {
      ...(ie2.value !== null && { IE2: ie2.value }),
      ...(ie3.value !== null && { IE3: ie3.value }),
      ...(ie4.value !== null && { IE4: ie4.value }),
    },
    repairPrice: repair.value,
    shelfPrice: shelf.value,
    assumptions: [price, hours, years, discount, growth, work, down, shelf, ie2, ie3, ie4, repair],
  };
}

function assumptionOf({ name, label, unit, min, max, isWhole, ofSite }: Asked, query: Query): Assumption {
  const told = query[name];
  const typed = (Array.isArray(told) ? (told[0] ?? '') : (told ?? '')).trim().slice(0, 24);
  const site = { name, label, unit, value: ofSite, from: ofSite === null ? 'nobody' : 'site', error: null } as const;
  if (typed === '') return { ...site, typed: '' };
  const read = signedNumber(typed, { min, max });
  if (!read.ok) return { ...site, typed, error: `“${typed}” ${read.problems[0]?.says ?? 'is not understood'}.` };
  if (isWhole && !Number.isInteger(read.value)) return { ...site, typed, error: `“${typed}” must be whole.` };
  return { ...site, typed, value: read.value, from: 'address' };
}
