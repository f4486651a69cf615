import { columnsOfRows, type Programme } from './programme';

/**
 * The greedy choice: again and again the column of least cost for each row it newly covers; of equals the one that covers
 * more, then the lesser tie, then the first. It costs at most `harmonic` times the best (Chvátal 1979; the bound ln n + 1
 * as taught with set cover). Rows that no column covers stay uncovered.
 */
export function greedy(programme: Programme): number[] {
  const { columns } = programme;
  const columnsOf = columnsOfRows(programme);
  const fresh = columns.map(({ rows }) => rows.length);
  const isCovered = new Uint8Array(programme.rowCount);
  const chosen: number[] = [];
  for (;;) {
    const best = bestOf(programme, fresh);
    if (best === null) return chosen;
    chosen.push(best);
    for (const row of columns[best]?.rows ?? []) {
      if (isCovered[row] === 1) continue;
      isCovered[row] = 1;
      for (const column of columnsOf[row] ?? []) fresh[column] = (fresh[column] as number) - 1;
    }
  }
}

function bestOf({ columns }: Programme, fresh: readonly number[]): number | null {
  let best: number | null = null;
  for (let i = 0; i < columns.length; i += 1) {
    const count = fresh[i] as number;
    if (count > 0 && (best === null || isBetter(i, best))) best = i;
  }
  return best;

  // Fractions are compared crosswise: whole numbers stay whole.
  function isBetter(one: number, other: number): boolean {
    const [a, b] = [columns[one], columns[other]];
    if (a === undefined || b === undefined) return false;
    const [newOfA, newOfB] = [fresh[one] as number, fresh[other] as number];
    const difference = a.cost * newOfB - b.cost * newOfA;
    if (difference !== 0) return difference < 0;
    return newOfA !== newOfB ? newOfA > newOfB : a.tie < b.tie;
  }
}

/** H(n) = 1 + 1/2 + … + 1/n for the greatest number n of rows that one column covers. */
export function harmonic({ columns }: Programme): number {
  const most = columns.reduce((n, { rows }) => Math.max(n, rows.length), 0);
  let sum = 0;
  for (let i = 1; i <= most; i += 1) sum += 1 / i;
  return sum;
}
