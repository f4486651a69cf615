import type { About } from './asked';

/** Today where the site is, by the server's clock as the phone can tell it: YYYY-MM-DD. */
export const todayAt = ({ site, clockAhead }: Pick<About, 'site' | 'clockAhead'>): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone: site.timezone }).format(new Date(Date.now() - clockAhead));
