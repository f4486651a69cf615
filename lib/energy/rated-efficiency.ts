import type { RatingRow } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { classEfficiency } from './class-efficiency';
import { known, unknown, type WorkedOut } from './worked-out';

/** Full-load efficiency, %: as the plate prints it, else of the class that the site lets such a motor count as. */
export function ratedEfficiency(motor: Motor, { plate }: RatingRow, settings: SiteSettings): WorkedOut {
  if (plate === null) return unknown('No rating of this motor serves the supply.');
  if (plate.efficiencyPct !== null) return known(plate.efficiencyPct, 'the plate’s efficiency');
  const { unprintedClass } = settings;
  if (unprintedClass === null)
    return unknown('The plate prints no efficiency, and the site has not said which class such a motor counts as.');
  const nominal = classEfficiency(unprintedClass, motor, plate.kw, plate.hertz);
  if (nominal.value === null) return unknown(`The plate prints no efficiency. ${nominal.why}`);
  return known(nominal.value, `the plate prints none, so the site’s choice: ${nominal.from}`);
}
