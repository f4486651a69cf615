import type { SiteSettings } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import type { HubChange } from '../context/hub-change';
import type { Work } from '../finding';

/** Kinds of hub change that are work, with a new key in each. */
type HubWork = Exclude<HubChange['kind'], 'none' | 'impossible' | 'unknown'>;

export function hubWork(kind: HubWork, haveMm: number, needMm: number, hours: SiteSettings['hours']): Work {
  const have = figure(haveMm, 3);
  const need = figure(needMm, 3);
  switch (kind) {
    case 'bushing':
      return { id: 'bushing', what: `Fit a hub bushing bored ${have} mm, with its key`, hours: hours.bushing };
    case 'sleeve':
      return {
        id: 'sleeve',
        what: `Fit a keyed sleeve, ${have} mm inside and ${need} mm outside`,
        hours: hours.sleeve,
      };
    case 'rebore':
      return {
        id: 'rebore',
        what: `Rebore the hub from ${need} to ${have} mm and cut its keyway anew`,
        hours: hours.rebore,
      };
    case 'new-hub':
      return { id: 'new-hub', what: `Fit a new hub bored ${have} mm, with its key`, hours: hours['new-hub'] };
    case 'new-sheave':
      return {
        id: 'sheave',
        what: `Fit a sheave bored ${have} mm, with its key, of the pitch diameter that the speed asks for`,
        hours: hours.sheave,
      };
    case 'quill-bushing':
      return {
        id: 'quill-bushing',
        what: `Fit the gear’s reducer bushing, ${have} mm inside and ${need} mm outside`,
        hours: hours['quill-bushing'],
      };
  }
}
