import { type Column, columnsOfRows, type Programme } from './programme';

export interface Reduced {
  /** What is left to be chosen, its rows and columns counted anew. */
  programme: Programme;
  /** For each column that is left, which one of the whole it is. */
  columnOf: number[];
  /** Columns of the whole that every choice must have. */
  forced: number[];
}

/**
 * The same choice made smaller, by three rules that leave cost and tie of the best as they are, used until none applies:
 * - a row that only one column covers forces it;
 * - a row goes when the columns of another row all cover it too: whatever covers that one covers it;
 * - a column goes when another covers its rows, and more, at no greater cost and tie; of equals the first stays.
 * Every row must have a column.
 */
export function reduced(whole: Programme): Reduced {
  const state = stateOf(whole);
  const forced: number[] = [];
  for (let changed = true; changed; ) {
    changed = force(state, forced);
    changed = dropRows(state) || changed;
    changed = dropColumns(state, whole) || changed;
  }
  return { ...renumbered(state, whole), forced };
}

/** What is left: for each row its columns, for each column its rows; null: it is gone. */
interface State {
  columnsOf: (number[] | null)[];
  rowsOf: (number[] | null)[];
}

function stateOf(whole: Programme): State {
  const columnsOf = columnsOfRows(whole);
  const empty = columnsOf.findIndex((columns) => columns.length === 0);
  if (empty >= 0) throw new Error(`no column covers row ${empty}`);
  return { columnsOf, rowsOf: whole.columns.map(({ rows }) => (rows.length === 0 ? null : [...rows])) };
}

function force(state: State, forced: number[]): boolean {
  const before = forced.length;
  state.columnsOf.forEach((columns) => {
    const [only] = columns ?? [];
    if (columns?.length !== 1 || only === undefined) return;
    const covered = state.rowsOf[only];
    if (covered == null) return; // forced by a row before it
    forced.push(only);
    state.rowsOf[only] = null;
    for (const row of covered) state.columnsOf[row] = null;
  });
  if (forced.length === before) return false;
  tidy(state);
  return true;
}

/** How often each of `over` is met among the lists that `through` leads to: a superset is met every time. */
function supersetsOf(through: readonly number[], lists: readonly (number[] | null)[], met: Int32Array): number[] {
  const touched: number[] = [];
  for (const one of through)
    for (const other of lists[one] ?? []) {
      if (met[other] === 0) touched.push(other);
      met[other] = (met[other] as number) + 1;
    }
  const supersets = touched.filter((other) => met[other] === through.length);
  for (const other of touched) met[other] = 0;
  return supersets;
}

function dropRows(state: State): boolean {
  const { columnsOf, rowsOf } = state;
  const met = new Int32Array(columnsOf.length);
  const byFewest = [...columnsOf.keys()].filter((row) => columnsOf[row] !== null);
  const sizeOf = (row: number) => (columnsOf[row] as number[]).length;
  byFewest.sort((a, b) => sizeOf(a) - sizeOf(b) || a - b);
  let changed = false;
  for (const row of byFewest) {
    const columns = columnsOf[row];
    if (columns == null) continue;
    for (const other of supersetsOf(columns, rowsOf, met)) {
      if (other === row || columnsOf[other] === null) continue;
      columnsOf[other] = null;
      changed = true;
    }
  }
  if (changed) tidy(state);
  return changed;
}

function dropColumns(state: State, { columns }: Programme): boolean {
  const { columnsOf, rowsOf } = state;
  const met = new Int32Array(rowsOf.length);
  let changed = false;
  for (let column = 0; column < rowsOf.length; column += 1) {
    const rows = rowsOf[column];
    const own = columns[column];
    if (rows == null || own === undefined) continue;
    const isBeaten = supersetsOf(rows, columnsOf, met).some((other) => {
      const over = columns[other];
      const more = rowsOf[other];
      if (other === column || more == null || over === undefined) return false;
      if (over.cost > own.cost || over.tie > own.tie) return false;
      const isSame = more.length === rows.length && over.cost === own.cost && over.tie === own.tie;
      return !isSame || other < column;
    });
    if (!isBeaten) continue;
    rowsOf[column] = null;
    changed = true;
  }
  if (changed) tidy(state);
  return changed;
}

/** Takes what is gone out of the lists of what is left. */
function tidy({ columnsOf, rowsOf }: State): void {
  columnsOf.forEach((columns, row) => {
    if (columns !== null) columnsOf[row] = columns.filter((column) => rowsOf[column] !== null);
  });
  rowsOf.forEach((rows, column) => {
    if (rows === null) return;
    const left = rows.filter((row) => columnsOf[row] !== null);
    rowsOf[column] = left.length === 0 ? null : left;
  });
}

function renumbered({ columnsOf, rowsOf }: State, whole: Programme): Omit<Reduced, 'forced'> {
  const rowOf = new Map<number, number>();
  columnsOf.forEach((columns, row) => {
    if (columns !== null) rowOf.set(row, rowOf.size);
  });
  const columnOf = [...rowsOf.keys()].filter((column) => rowsOf[column] !== null);
  const columns = columnOf.map((column) => {
    const { cost, tie } = whole.columns[column] as Column;
    return { cost, tie, rows: (rowsOf[column] as number[]).map((row) => rowOf.get(row) as number) };
  });
  return { programme: { rowCount: rowOf.size, columns }, columnOf };
}
