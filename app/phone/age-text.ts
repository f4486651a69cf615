import { dateFormat } from '@/app/date-format';

/** How long ago a moment was, roughly: "3 min", "2 h", "4 days". */
export function ageText(at: string, now: string): string {
  const minutes = Math.max(0, Math.round((Date.parse(now) - Date.parse(at)) / 60_000));
  if (minutes < 1) return 'under 1 min';
  if (minutes < 90) return `${minutes} min`;
  const hours = Math.round(minutes / 60);
  if (hours < 48) return `${hours} h`;
  return `${Math.round(hours / 24)} days`;
}

/** "02:10" where the site is. */
export const clockText = (at: string, timeZone: string): string =>
  dateFormat(timeZone, { timeStyle: 'short' }).format(new Date(at));
