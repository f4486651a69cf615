import { dateFormat } from './date-format';

export { today } from '@/lib/register/today';

/** "25 Nov 2026" where the site is. */
export const dayText = (at: Date, timezone: string) => textOf(at, timezone, { dateStyle: 'medium' });

/** "25 Nov 2026, 03:04" where the site is. */
export const momentText = (at: Date, timezone: string) =>
  textOf(at, timezone, { dateStyle: 'medium', timeStyle: 'short' });

/** "25 Nov 2026" of a day written as 2026-11-25. */
export const isoDay = (day: string) => dayText(new Date(`${day}T00:00:00Z`), 'UTC');

const textOf = (at: Date, timeZone: string, style: Intl.DateTimeFormatOptions) =>
  dateFormat(timeZone, style).format(at);

/** The moment at which a day (YYYY-MM-DD) begins where the site is, or the day so many days later; null: it is no day. */
export function dayStart(day: string | null, timezone: string, later: number): Date | null {
  const [, year, month, date] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(day ?? '') ?? [];
  if (date === undefined) return null;
  return momentAt(Date.UTC(Number(year), Number(month) - 1, Number(date) + later), timezone);
}

/** The moment of a day (YYYY-MM-DD) and a time (HH:MM) where the site is; null: they are none. */
export function timeOfDay(day: string, time: string, timezone: string): Date | null {
  const [, hours, minutes] = /^(\d{1,2})[:.](\d\d)$/.exec(time) ?? [];
  const start = /^\d{4}-\d\d-\d\d$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  if (minutes === undefined || Number(hours) > 23 || Number(minutes) > 59 || Number.isNaN(start)) return null;
  if (!new Date(start).toISOString().startsWith(day)) return null;
  return momentAt(start + (Number(hours) * 60 + Number(minutes)) * 60_000, timezone);
}

/** "14:05" where the site is. */
export const clockText = (at: Date, timezone: string) => textOf(at, timezone, { timeStyle: 'short' });

/** The moment at which clocks of a time zone show what UTC shows at `guess`. */
function momentAt(guess: number, timezone: string): Date {
  // Off by what the site's clocks differ from UTC at about that moment; twice, since the first guess may lie across a change.
  const first = guess - offset(guess, timezone);
  return new Date(guess - offset(first, timezone));
}

/** How far the clocks of a time zone are ahead of UTC at a moment, ms. */
function offset(at: number, timezone: string): number {
  const parts = dateFormat(timezone, { dateStyle: 'short', timeStyle: 'medium' }).format(at).match(/\d+/g);
  const [date = 0, month = 1, year = 1970, hours = 0, minutes = 0, seconds = 0] = (parts ?? []).map(Number);
  return Date.UTC(year, month - 1, date, hours, minutes, seconds) - Math.floor(at / 1000) * 1000;
}
