import { z } from 'zod';
import { read } from '@/lib/plant/reading';
import { problem } from './problem';

/** The question of an address, read by its schema; a key that is not known, or comes twice where it is no list, is refused. */
export function querySent<T extends z.ZodObject>(request: Request, schema: T): z.output<T> | Response {
  const query = new URL(request.url).searchParams;
  const lists = Object.keys(schema.shape).filter((key) => schema.shape[key] instanceof z.ZodArray);
  const twice = [...new Set(query.keys())].filter((key) => !lists.includes(key) && query.getAll(key).length > 1);
  if (twice.length > 0)
    return problem(
      422,
      'The question is not understood.',
      twice.map((path) => ({ path, value: null, says: 'is there more than once' })),
    );
  // No text of a question has them, and the database refuses them.
  const unclean = [...query].filter(([, value]) => /[\p{Cc}\p{Cs}]/u.test(value));
  if (unclean.length > 0)
    return problem(
      422,
      'The question is not understood.',
      unclean.map(([path]) => ({ path, value: null, says: 'must be one line of plain text' })),
    );
  const told = lists.filter((key) => query.has(key)).map((key) => [key, query.getAll(key)] as const);
  const asked = read(schema, { ...Object.fromEntries(query), ...Object.fromEntries(told) });
  return asked.ok ? asked.value : problem(422, 'The question is not understood.', asked.problems);
}
