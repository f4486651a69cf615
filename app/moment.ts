/** "25 Nov 2026" where the site is. */
export const dayText = (at: Date, timezone: string) => textOf(at, timezone, { dateStyle: 'medium' });

/** "25 Nov 2026, 03:04" where the site is. */
export const momentText = (at: Date, timezone: string) =>
  textOf(at, timezone, { dateStyle: 'medium', timeStyle: 'short' });

/** Today where the site is, as YYYY-MM-DD. */
export const today = (timezone: string) => new Intl.DateTimeFormat('en-CA', { timeZone: timezone }).format(new Date());

const textOf = (at: Date, timeZone: string, style: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat('en-GB', { ...style, timeZone }).format(at);
