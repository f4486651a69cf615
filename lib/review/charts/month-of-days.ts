import { dayAfter } from './every-day';

/** How the review stood at the end of a day of a site, and what had changed since the day kept before. */
export interface ReviewedDay {
  /** YYYY-MM-DD where the site is. */
  day: string;
  open: number;
  accepted: number;
  /** Findings that stood and did not on the day kept before, and the other way round; null: not known. */
  opened: number | null;
  closed: number | null;
  /** Of the open ones, kWh a year. */
  kwh: number;
  /** The same in hundredths of the site's money. */
  moneyHundredths: number;
  /** Of so many open ones what they cost is not known. */
  unpriced: number;
}

/** Days without a break, YYYY-MM-DD, the last one among them. */
export interface Stretch {
  first: string;
  last: string;
}

export interface MonthOfDays {
  /** The days of the month that are kept, oldest first. */
  days: readonly ReviewedDay[];
  /** The day kept last before the month, which the first one of it is compared with; null: none is. */
  before: string | null;
  /** The days of the month, up to yesterday, that are not kept. */
  missing: readonly Stretch[];
  /** Over the days that tell, each against the day kept before it; null: none of them tells. */
  opened: number | null;
  closed: number | null;
  /** So many kept days do not tell. */
  untold: number;
}

/** A month: its first day, and the first day after it, YYYY-MM-DD. */
export interface MonthDays {
  from: string;
  to: string;
}

/** What is known of the review in a month. `days` are those kept of it, oldest first; `today` is not missed before it ends. */
export function monthOfDays(
  { from, to }: MonthDays,
  days: readonly ReviewedDay[],
  before: string | null,
  today: string,
): MonthOfDays {
  const isKept = new Set(days.map(({ day }) => day));
  const missing: Stretch[] = [];
  for (let day = from; day < to && day < today; day = dayAfter(day)) {
    if (isKept.has(day)) continue;
    const last = missing.at(-1);
    if (last !== undefined && dayAfter(last.last) === day) last.last = day;
    else missing.push({ first: day, last: day });
  }
  const told = days.flatMap(({ opened, closed }) => (opened === null || closed === null ? [] : [{ opened, closed }]));
  const isTold = told.length > 0;
  return {
    ...{ days, before, missing, untold: days.length - told.length },
    opened: isTold ? told.reduce((sum, one) => sum + one.opened, 0) : null,
    closed: isTold ? told.reduce((sum, one) => sum + one.closed, 0) : null,
  };
}
