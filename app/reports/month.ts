import { dayStart, today } from '@/app/moment';
import type { Span } from '@/lib/register/queries/month-report';
import type { MonthDays } from '@/lib/review/charts/month-of-days';

/** A month of a site's calendar: "2026-11". */
export interface Month {
  text: string;
  before: string;
  after: string;
  span: Span;
  days: MonthDays;
  /** Its first moment is still to come. */
  isToCome: boolean;
  isNow: boolean;
}

/** The month an address names, where the site is; "now" is the one that runs. Null: it names none. */
export function monthAsked(asked: string, timezone: string): Month | null {
  const running = today(timezone).slice(0, 7);
  const text = asked === 'now' ? running : asked;
  const [, year, month] = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(text) ?? [];
  if (year === undefined || month === undefined || Number(year) < FIRST_YEAR) return null;
  const after = moved(Number(year), Number(month) + 1);
  const from = dayStart(`${text}-01`, timezone, 0);
  const to = dayStart(`${after}-01`, timezone, 0);
  if (from === null || to === null) return null;
  const before = moved(Number(year), Number(month) - 1);
  const days = { from: `${text}-01`, to: `${after}-01` };
  return { text, before, after, span: { from, to }, days, isToCome: text > running, isNow: text === running };
}

/** No register is older: what stands before is a mistyped year. */
const FIRST_YEAR = 1970;

function moved(year: number, month: number): string {
  const at = new Date(Date.UTC(year, month - 1, 1));
  return at.toISOString().slice(0, 7);
}

/** "November 2026". */
export const monthWords = (text: string): string =>
  new Intl.DateTimeFormat('en-GB', { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(`${text}-01T00:00:00Z`),
  );

export const reportPath = (month: string) => `/reports/${encodeURIComponent(month)}`;
