import type { SheetRow } from '@/lib/import/sheet-row';
import { KINDS, type Must, type Row } from './messy-kinds';
import { cellsOf, dice, leavesOf, type Manner, type Truth, truthOf } from './messy-truth';

/** What must become of a row, written from its true values before they were spoilt. */
export interface Key {
  line: number;
  kind: string;
  must: Must;
  leaves: Record<string, unknown>;
}

export interface MessySheet {
  rows: SheetRow[];
  keys: Key[];
}

const ROWS = 2_000;

/** A sheet of 2 000 rows below a title and headings, each row spoilt in one named way. The same for the same seed. */
export function messySheet(manner: Manner, seed: number): MessySheet {
  const d = dice(seed);
  const kinds = Object.keys(KINDS);
  const rows: SheetRow[] = [
    { line: 1, cells: ['Harrowmere works: pumps and their motors'], merged: true },
    { line: 2, cells: [''] },
    { line: 3, cells: [...manner.headings] },
  ];
  const keys: Key[] = [];
  let before: Truth | null = null;
  for (let n = 0; n < ROWS; n += 1) {
    const kind = kinds[n % kinds.length] as string;
    const t: Truth = truthOf(n + 1, manner, d);
    const row: Row = {
      t,
      cells: cellsOf(t, manner),
      types: null,
      isMerged: false,
      manner,
      d,
      before,
      must: { be: 'right' },
    };
    KINDS[kind]?.(row);
    const line = n + 4;
    const { cells, types, isMerged, must } = row;
    rows.push({ line, cells, ...(types ? { types } : {}), ...(isMerged ? { merged: true } : {}) });
    const leaves = must.be === 'right' ? withoutUntold(leavesOf(row.t)) : {};
    keys.push({ line, kind, must, leaves });
    // Only what was written as it is can be written again.
    if (kind === 'as it should be') before = t;
  }
  return { rows, keys };
}

const withoutUntold = (leaves: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(leaves).filter(([, value]) => value !== undefined));
