import { problem } from './problem';

/** Where a part of a list ends, as the next is asked for: nobody is to read or make one. */
export const placeOf = (keys: readonly string[]): string => Buffer.from(JSON.stringify(keys)).toString('base64url');

/** The keys behind which the part begins; or the answer that refuses what is no place. */
export function keysOf(place: string, isPlace: (keys: readonly string[]) => boolean): string[] | Response {
  try {
    const keys: unknown = JSON.parse(Buffer.from(place, 'base64url').toString('utf8'));
    if (Array.isArray(keys) && keys.every(isKey) && isPlace(keys)) return keys;
  } catch {
    // told below
  }
  return problem(422, 'The question is not understood.', [
    { path: 'after', value: place.slice(0, 80), says: 'must be the “next” of a part of this list' },
  ]);
}

/** The database refuses a nought in a text. */
const isKey = (key: unknown): key is string => typeof key === 'string' && !key.includes('\0');
