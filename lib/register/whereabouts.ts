import type { Prisma } from '@/lib/db/generated/client';
import { PLACES, type Place, type Whereabouts } from '@/lib/plant/whereabouts';

export const WHEREABOUTS_ROW = {
  set: { select: { tag: true } },
  shelf: { select: { name: true, store: { select: { name: true } } } },
} as const satisfies Prisma.MotorInclude;

type Row = Pick<
  Prisma.MotorGetPayload<{ include: typeof WHEREABOUTS_ROW }>,
  'id' | 'plantNumber' | 'place' | 'set' | 'shelf'
>;

export function whereaboutsOf({ id, plantNumber, place, set, shelf }: Row): Whereabouts {
  return {
    motorId: id,
    plantNumber,
    place: known(place),
    setTag: set === null ? null : set.tag,
    store: shelf === null ? null : shelf.store.name,
    shelf: shelf === null ? null : shelf.name,
  };
}

export function known(place: string): Place {
  const found = PLACES.find((each) => each === place);
  if (!found) throw new Error(`The database told an unknown place: ${place}`);
  return found;
}
