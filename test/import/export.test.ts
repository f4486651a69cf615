import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draftOf } from '@/lib/import/draft';
import { exportColumns, exportRow, exportSheet } from '@/lib/import/export-columns';
import type { ImportKind } from '@/lib/import/field';
import { fieldsOf } from '@/lib/import/fields';
import { findColumns } from '@/lib/import/find-columns';
import type { Existing } from '@/lib/import/kept';
import { planRow } from '@/lib/import/plan';
import { isSameValue } from '@/lib/import/same-value';
import type { CellType, SheetRow } from '@/lib/import/sheet-row';
import { valueAt } from '@/lib/import/value-at';
import { motor } from '@/lib/plant/motor';
import { set } from '@/lib/plant/set';
import { anyKept } from './any-kept';

const RUNS = { seed: 20261127, numRuns: 250 };

/** An exported row as a sheet's reader hands it on: with the cells' types, or as plain text. */
function asRow(cells: readonly (string | number | null)[], isTyped: boolean): SheetRow {
  const types = cells.map((cell): CellType => (cell === null ? 'empty' : typeof cell === 'number' ? 'number' : 'text'));
  return { line: 2, cells: cells.map((cell) => (cell === null ? '' : String(cell))), ...(isTyped ? { types } : {}) };
}

function read(kind: ImportKind, kept: Existing, isTyped = true) {
  return draftOf(kind, asRow(exportRow(kind, kept), isTyped), COLUMNS[kind], { decimal: '.' });
}

const columnsOf = (kind: ImportKind) =>
  findColumns(kind, [{ line: 1, cells: exportColumns(kind).map(({ heading }) => heading) }], new Map()).columns;
const COLUMNS = { sets: columnsOf('sets'), motors: columnsOf('motors') };

describe.each(['sets', 'motors'] as const)('an export of %s', (kind) => {
  test('every heading names its own column', () => {
    const columns = exportColumns(kind);
    const found = findColumns(kind, [{ line: 1, cells: columns.map(({ heading }) => heading) }], new Map());
    expect(found.columns.map(({ field }) => field)).toEqual(columns.map(({ id }) => id));
    expect(found.problems).toEqual([]);
  });

  test.each(['typed cells', 'plain text'])('imported again changes nothing: %s', (how) => {
    fc.assert(
      fc.property(anyKept[kind].wild, (kept) => {
        const plan = planRow(read(kind, kept, how === 'typed cells'), kept);
        expect({ outcome: plan.outcome, changes: plan.changes, problems: plan.problems }).toEqual({
          outcome: 'same',
          changes: [],
          problems: [],
        });
      }),
      RUNS,
    );
  });

  test('imported into an empty register it tells everything that was kept', () => {
    fc.assert(
      fc.property(anyKept[kind].tame, (kept) => {
        const draft = read(kind, kept);
        expect(draft.problems).toEqual([]);
        for (const field of fieldsOf(kind)) {
          if (field.path === null || field.id === 'place') continue;
          const had = valueAt(kept, field.path);
          const hasOne =
            had !== undefined &&
            (had !== null || field.id === 'placeClassification') &&
            !(field.id === 'needs' && (had as []).length === 0);
          if (hasOne)
            expect([
              field.id,
              isSameValue(field, had, valueAt(draft, field.path)),
              had,
              valueAt(draft, field.path),
            ]).toContain(true);
        }
      }),
      RUNS,
    );
  });

  test('what is inside, with every key told or null, is exported alike', () => {
    fc.assert(
      fc.property(anyKept[kind].wild, (kept) => {
        const inside = {
          set: kept.set && { ...kept.set, set: set.parse({ ...kept.set.set }) },
          motor: kept.motor && { ...kept.motor, motor: motor.parse(kept.motor.motor) },
        } as Existing;
        if (kept.set && !('classification' in (kept.set.set.surroundings ?? {}))) return;
        const bare = (cells: unknown[]) => cells.filter((cell) => cell !== null && cell !== 'none');
        expect(bare(exportRow(kind, inside))).toEqual(bare(exportRow(kind, kept)));
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  test('columns that no row fills are left out of a sheet', () => {
    fc.assert(
      fc.property(fc.array(anyKept[kind].tame, { minLength: 1, maxLength: 3 }), (kept) => {
        const { columns, rows } = exportSheet(kind, kept);
        for (const [i, { id }] of columns.entries())
          expect([id, rows.some((row) => row[i] !== null) || id === 'plantNumber']).toEqual([id, true]);
        expect(rows.every((row) => row.length === columns.length)).toBe(true);
      }),
      { ...RUNS, numRuns: 30 },
    );
  });
});
