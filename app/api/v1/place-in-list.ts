import { problem } from './problem';

/** Where a part of a list ends, as the next is asked for: nobody is to read or make one. */
export const placeOf = (keys: readonly string[]): string => Buffer.from(JSON.stringify(keys)).toString('base64url');

/** The keys behind which the part begins; empty: the list begins. Or the answer that refuses what is no place. */
export function keysOf(place: string | undefined, count: number): string[] | Response {
  if (place === undefined) return [];
  try {
    const keys: unknown = JSON.parse(Buffer.from(place, 'base64url').toString('utf8'));
    if (
      Array.isArray(keys) &&
      keys.length === count &&
      keys.every((key) => typeof key === 'string' && !key.includes('\0'))
    )
      return keys;
  } catch {
    // told below
  }
  return noPlace(place);
}

export const noPlace = (place: string): Response =>
  problem(422, 'The question is not understood.', [
    { path: 'after', value: place.slice(0, 80), says: 'must be the “next” of a part of this list' },
  ]);
