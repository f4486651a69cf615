import type { Programme } from './programme';

export interface Verified {
  /** Summed anew over the chosen columns. */
  cost: number;
  tie: number;
  /** Rows that no chosen column covers. */
  uncovered: number[];
}

/**
 * What a choice covers and costs, worked out from the programme alone, whoever made it. A column that is chosen twice or
 * is not there throws: such an answer is of another programme.
 */
export function verified({ rowCount, columns }: Programme, chosen: readonly number[]): Verified {
  const isCovered = new Uint8Array(rowCount);
  let [cost, tie] = [0, 0];
  if (new Set(chosen).size !== chosen.length) throw new Error('a column was chosen twice');
  for (const index of chosen) {
    const column = columns[index];
    if (column === undefined) throw new Error(`column ${index} is not there`);
    cost += column.cost;
    tie += column.tie;
    for (const row of column.rows) isCovered[row] = 1;
  }
  const uncovered: number[] = [];
  for (let row = 0; row < rowCount; row += 1) if (isCovered[row] === 0) uncovered.push(row);
  return { cost, tie, uncovered };
}
