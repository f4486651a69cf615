export const PLACES = ['in-set', 'on-shelf', 'at-repair', 'on-order', 'scrapped'] as const;
export type Place = (typeof PLACES)[number];

/** Where a motor is. `store` and `shelf` are told on a shelf, `setTag` in a set. */
export interface Whereabouts {
  motorId: string;
  plantNumber: string;
  place: Place;
  setTag: string | null;
  store: string | null;
  shelf: string | null;
}
