import type { Matrix } from './matrix';

/** As much of a matrix as is shown, and how much is not. */
export interface MatrixPart extends Matrix {
  left: { rows: number; sets: number; columns: number; motors: number };
}

/** The rows with most sets and the columns that serve most, in the order they stood in. */
export function matrixPart({ rows, columns }: Matrix, most: { rows: number; columns: number }): MatrixPart {
  const rowsKept = greatest(rows, most.rows, ({ sets }) => sets.length);
  // Of columns that serve as many the one with more motors tells more.
  const columnsKept = greatest(columns, most.columns, ({ pairs, motors }) => pairs + motors.length / LARGE);
  const isKept = columns.map((column) => columnsKept.includes(column));
  return {
    rows: rowsKept.map((row) => ({ ...row, cells: row.cells.filter((_, i) => isKept[i]) })),
    columns: columnsKept,
    left: {
      rows: rows.length - rowsKept.length,
      sets: sum(rows, ({ sets }) => sets.length) - sum(rowsKept, ({ sets }) => sets.length),
      columns: columns.length - columnsKept.length,
      motors: sum(columns, ({ motors }) => motors.length) - sum(columnsKept, ({ motors }) => motors.length),
    },
  };
}

/** More motors than a site has. */
const LARGE = 1e7;

/** Those with the greatest size, in the order they came; of equals the first. */
function greatest<T>(all: readonly T[], most: number, sizeOf: (one: T) => number): T[] {
  const kept = new Set([...all].sort((a, b) => sizeOf(b) - sizeOf(a)).slice(0, most));
  return all.filter((one) => kept.has(one));
}

const sum = <T>(all: readonly T[], of: (one: T) => number) => all.reduce((total, one) => total + of(one), 0);
