import { motorThing } from './motor-thing';
import { areaThing, shelfThing, storeThing } from './place-things';
import { setThing } from './set-thing';
import type { Thing, ThingName } from './thing';

export const ALL_THINGS: Readonly<Record<ThingName, Thing>> = {
  area: areaThing,
  store: storeThing,
  shelf: shelfThing,
  set: setThing,
  motor: motorThing,
};
