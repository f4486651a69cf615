import { kindsOf } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Motor } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { ShelfFor } from '@/lib/review/cure/cures-of';
import type { KeptPlant } from '../kept-plant/kept-plant';

/** The motors on a site's shelves, sieved once for all sets. */
export interface ShelfNow {
  motors: readonly Motor[];
  /** By plant number. */
  motorOf: (number: string) => Motor | null;
  passing: ShelfFor;
}

/** The very same as before where no motor on a shelf is another and the settings say the same. */
export function shelfNow(plant: KeptPlant, settings: SiteSettings, before: ShelfNow | null): ShelfNow {
  const motors = [...plant.motors.values()].filter(({ place }) => place === 'on-shelf').map(({ motor }) => motor);
  if (before !== null && isAlike(motors, before.motors)) return before;
  const byNumber = new Map(motors.map((motor) => [motor.id, motor]));
  let screen: ShelfFor | null = null;
  return {
    motors,
    motorOf: (number) => byNumber.get(number) ?? null,
    passing: (set) => {
      screen ??= screenOf(kindsOf(motors), settings);
      return screen(set);
    },
  };
}

const isAlike = (motors: readonly Motor[], before: readonly Motor[]): boolean =>
  motors.length === before.length && motors.every((motor, i) => motor === before[i]);
