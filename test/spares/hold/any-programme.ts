import fc from 'fast-check';
import type { Programme } from '@/lib/spares/hold/programme';
import { verified } from '@/lib/spares/hold/verified';

/** A choice by names, each of cost 1: motors and the positions they cover, counted from 1. */
export function programmeOf(motors: Record<string, number[]>): { programme: Programme; names: string[] } {
  const columns = Object.values(motors).map((of) => ({ cost: 1, tie: 0, rows: of.map((position) => position - 1) }));
  return { programme: { rowCount: Math.max(...Object.values(motors).flat()), columns }, names: Object.keys(motors) };
}

/** Any programme of up to so many rows and columns in which every row can be covered. */
export function anyProgramme(mostRows: number, mostColumns: number): fc.Arbitrary<Programme> {
  return fc.integer({ min: 1, max: mostRows }).chain((rowCount) =>
    fc
      .array(
        fc.record({
          cost: fc.integer({ min: 0, max: 6 }),
          tie: fc.integer({ min: 0, max: 2 }),
          rows: fc.uniqueArray(fc.integer({ min: 0, max: rowCount - 1 }), { maxLength: rowCount }),
        }),
        { minLength: 1, maxLength: mostColumns },
      )
      .map((columns) => ({
        rowCount,
        columns: columns.map((column, i) => ({
          ...column,
          // The first has whatever no other has.
          rows: sorted(i === 0 ? [...column.rows, ...without(rowCount, columns)] : column.rows),
        })),
      })),
  );
}

const sorted = (rows: number[]) => [...new Set(rows)].sort((a, b) => a - b);

function without(rowCount: number, columns: readonly { rows: number[] }[]): number[] {
  const had = new Set(columns.flatMap(({ rows }) => rows));
  return Array.from({ length: rowCount }, (_, row) => row).filter((row) => !had.has(row));
}

/** Cost and tie of the best of all choices there are. */
export function bruteForce(programme: Programme): [number, number] {
  let best: [number, number] | null = null;
  for (let bits = 0; bits < 2 ** programme.columns.length; bits += 1) {
    const chosen = [...programme.columns.keys()].filter((column) => (bits >> column) & 1);
    const { cost, tie, uncovered } = verified(programme, chosen);
    if (uncovered.length > 0) continue;
    if (best === null || cost < best[0] || (cost === best[0] && tie < best[1])) best = [cost, tie];
  }
  if (best === null) throw new Error('nothing covers every row');
  return best;
}
