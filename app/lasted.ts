import { dateFormat } from '@/app/date-format';
import { momentText, today } from './moment';

const MINUTE = 60_000;

/** How long something lasted, in the two largest units: "41 min", "3 h 12 min", "2 days 4 h". Below a minute it says so. */
export function lastedText(ms: number): string {
  const minutes = Math.floor(ms / MINUTE);
  if (minutes < 1) return 'under 1 min';
  const [days, hours, rest] = [Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60];
  if (days > 0) return `${days === 1 ? '1 day' : `${days} days`}${hours === 0 ? '' : ` ${hours} h`}`;
  return hours === 0 ? `${rest} min` : `${hours} h${rest === 0 ? '' : ` ${rest} min`}`;
}

/** "03:12" of today where the site is, "25 Nov 2026, 03:12" of any other day. */
export function sinceText(at: Date, timezone: string): string {
  const dayOf = new Intl.DateTimeFormat('en-CA', { timeZone: timezone });
  if (dayOf.format(at) !== today(timezone)) return momentText(at, timezone);
  return dateFormat(timezone, { timeStyle: 'short' }).format(at);
}

/** "03:12, standing 41 min": when it failed and how long it has stood, by the server's clock. */
export const standingText = (at: Date, timezone: string): string =>
  `${sinceText(at, timezone)}, standing ${lastedText(Date.now() - at.getTime())}`;
