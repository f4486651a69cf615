import type { ShelfPlace } from '@/lib/register/queries/shelves';

/** The shelves as the choices of a motor's place. */
export const shelfChoices = (places: readonly ShelfPlace[]) =>
  places.map(({ shelfId, store, shelf }) => ({ value: `on-shelf ${shelfId}`, words: `on shelf ${store} / ${shelf}` }));
