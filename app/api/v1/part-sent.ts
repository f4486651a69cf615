import type { z } from 'zod';
import { keysOf, placeOf } from './place-in-list';
import { answer } from './problem';
import { querySent } from './query-sent';

const PART = 50;

/** Ordered by so many names. */
export const byNames = (count: number) => (keys: readonly string[]) => keys.length === count;

/** Answers a part of a list, and where the next begins. */
export async function partSent<T, Q extends z.ZodObject>(
  request: Request,
  { query }: { query: Q },
  {
    isPlace,
    find,
    keysAt,
    told,
  }: {
    /** Whether these can be what the list is ordered by. */
    isPlace: (keys: readonly string[]) => boolean;
    /** What stands behind these names, in their order; null: from the beginning. */
    find: (behind: string[] | null, take: number, asked: z.output<Q>) => Promise<T[]>;
    keysAt: (one: T) => string[];
    told: (one: T) => object;
  },
): Promise<Response> {
  const asked = querySent(request, query);
  if (asked instanceof Response) return asked;
  const { after, limit = PART } = asked as { after?: string; limit?: number };
  const keys = after === undefined ? null : keysOf(after, isPlace);
  if (keys instanceof Response) return keys;
  // One more than is told says whether there is a next part.
  const found = await find(keys, limit + 1, asked);
  const last = found.length > limit ? found[limit - 1] : undefined;
  return answer({
    items: found.slice(0, limit).map(told),
    next: last === undefined ? null : placeOf(keysAt(last)),
  });
}
