import type { SiteSettings } from '@/lib/plant/site-settings';
import { known, unknown, type WorkedOut } from './worked-out';

/** Hours in a year that a set runs: the site's. A set does not tell its own yet. */
export const hoursRun = (settings: SiteSettings): WorkedOut =>
  settings.hoursPerYear === null
    ? unknown('Hours run in a year are not told: the site’s settings have a field for them.')
    : known(settings.hoursPerYear, 'hours run in a year, the site’s settings');
