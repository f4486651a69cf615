import type { ReadingFinding } from '@/lib/job/reading-finding';
import type { Readings } from '@/lib/job/readings';

/** The readings of a row; null where none were told: the column then holds an empty object. */
export function readingsOfRow(json: unknown): Readings | null {
  // Written from this very type, and never changed since: the database refuses it.
  return typeof json === 'object' && json !== null && 'ticked' in json ? (json as Readings) : null;
}

export const readingFindingsOfRow = (json: unknown): ReadingFinding[] => json as ReadingFinding[];
