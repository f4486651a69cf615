import { isDatabaseGone } from '@/lib/db/database-gone';

/**
 * Writes what failed into the log under a reference of its own: by it, and by nothing else, whoever asked is told.
 * `isGone`: the database is away, which passes.
 */
export function failed(error: unknown, what: string): { isGone: boolean; reference: string } {
  const isGone = isDatabaseGone(error);
  const reference = crypto.randomUUID().slice(0, 8);
  console.error(`${reference} ${isGone ? 'the database is away' : what}`, error);
  return { isGone, reference };
}

export const referenceText = (reference: string): string => `Something failed here. Its reference is ${reference}.`;
