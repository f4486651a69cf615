import type { RunCounts } from '@/lib/register/import/run';

/** "2 000 rows: 1 200 new, 30 changed, 8 refused". */
export function countsText(counts: RunCounts): string {
  const told = (['new', 'changed', 'same', 'refused', 'applied'] as const).flatMap((outcome) => {
    const count = counts[outcome];
    return count > 0 ? [`${figure(count)} ${outcome === 'applied' ? 'written' : outcome}`] : [];
  });
  const rows = counts.rows === 1 ? 'one row' : `${figure(counts.rows)} rows`;
  return told.length === 0 ? rows : `${rows}: ${told.join(', ')}`;
}

/** With a thin space between thousands. */
export const figure = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, '\u202F');
