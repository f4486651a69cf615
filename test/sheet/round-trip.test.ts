import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findDialect } from '@/lib/sheet/find-dialect';
import { guarded, unguarded } from '@/lib/sheet/guard';
import { readCsv } from '@/lib/sheet/read-csv';
import { readRows } from '@/lib/sheet/read-rows';
import { type Cell, writeCsv } from '@/lib/sheet/write-csv';
import { writeXlsx } from '@/lib/sheet/write-xlsx';
import { bytesOf, rowsOf } from './bytes';

/** Text as people type it, and as hostile ones do: quotes, signs of formulas, line breaks, signs of every script. */
const text = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.constantFrom(
    '=1+1',
    '@x',
    '+1',
    '-1',
    '0012',
    '1E5',
    '3-4',
    '"',
    'a"b',
    ' a ',
    '7½ HP',
    '=cmd|x',
    "'=x",
    'ü°é',
    '‮x',
  ),
  fc.string({ unit: fc.constantFrom('"', ',', ';', '\n', '\t', "'", '=', ' ', 'x'), maxLength: 8 }),
);
const inCsv = text.filter((value) => !/[\0\r\uFEFF\p{Cs}]/u.test(value));
/** A first cell that is never blank, so that no row is left out. */
const rowsWith = (cell: fc.Arbitrary<string>) =>
  fc.array(
    fc.array(cell, { minLength: 3, maxLength: 3 }).map((cells) => ['k', ...cells]),
    { minLength: 1, maxLength: 12 },
  );

describe('what is written is read back cell for cell', () => {
  test('S4 as CSV, with the guard taken off again', async () => {
    await fc.assert(
      fc.asyncProperty(rowsWith(inCsv), async (rows) => {
        const bytes = await bytesOf(writeCsv(rows));
        const back = await rowsOf(readCsv(bytes, { encoding: 'utf-8', delimiter: ',' }));
        expect(back.map(({ cells }) => cells.map(unguarded))).toEqual(rows);
      }),
      { numRuns: 300 },
    );
  });

  test('as a workbook', async () => {
    await fc.assert(
      fc.asyncProperty(rowsWith(text), async (rows) => {
        const bytes = await bytesOf(writeXlsx('Sets', rows));
        const back = await rowsOf(readRows(bytes, await findDialect(bytes)));
        const padded = back.map(({ cells }) => [...cells, '', '', ''].slice(0, 4));
        expect(padded).toEqual(rows);
      }),
      { numRuns: 150 },
    );
  });

  test('figures as figures, also below zero', async () => {
    const rows: Cell[][] = [['k', -12.5, 0, 1e-7, 1750]];
    const csv = await bytesOf(writeCsv(rows));
    expect(new TextDecoder().decode(csv)).toBe('k,-12.5,0,1e-7,1750\r\n');
    const xlsx = await bytesOf(writeXlsx('S', rows));
    const [row] = await rowsOf(readRows(xlsx, await findDialect(xlsx)));
    expect(row).toMatchObject({
      cells: ['k', '-12.5', '0', '1e-7', '1750'],
      types: ['text', 'number', 'number', 'number', 'number'],
    });
  });
});

describe('S4 the guard', () => {
  test('no guarded text starts as a formula, and the way back is exact', () => {
    fc.assert(
      fc.property(text, (value) => {
        expect(guarded(value)).not.toMatch(/^\s*[=+\-@\t\r]/);
        expect(unguarded(guarded(value))).toBe(value);
      }),
      { numRuns: 2_000 },
    );
  });
  test.each([
    ['=SUM(A1)', "'=SUM(A1)"],
    ['-5 °C', "'-5 °C"],
    ["'=x", "''=x"],
    ["'plain", "'plain"],
    ['M-0412', 'M-0412'],
  ])('%s is written %s', (value, written) => {
    expect(guarded(value)).toBe(written);
  });
});
