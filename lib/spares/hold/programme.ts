/**
 * A choice to be made: columns that together cover every row, of the least cost, and among those of the least tie. A row
 * is a set (or the longer work at one), a column a motor to hold. Costs and ties are whole numbers from 0, so that sums
 * are exact.
 */
export interface Programme {
  rowCount: number;
  columns: readonly Column[];
}

export interface Column {
  cost: number;
  tie: number;
  /** The rows it covers, rising, each once. */
  rows: readonly number[];
}

/** For each row the columns that cover it, rising. */
export function columnsOfRows({ rowCount, columns }: Programme): number[][] {
  const of: number[][] = Array.from({ length: rowCount }, () => []);
  columns.forEach(({ rows }, column) => {
    for (const row of rows) of[row]?.push(column);
  });
  return of;
}
