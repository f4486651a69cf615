import QRCode from 'qrcode';
import { describe, expect, test } from 'vitest';
import { fittedMm } from '@/app/labels/fitted-mm';
import { cornerOf, onASheet, PAPERS, wordsMm } from '@/app/labels/papers';
import { partOf, printAsked } from '@/app/labels/print-asked';
import { qr } from '@/app/labels/qr';
import { LEAST_MODULE_MM } from '@/app/labels/where-they-lead';

// A4 is 210 × 297 mm (ISO 216), Letter 8 1/2 × 11 in (ANSI/ASME Y14.1); both from memory.
const PAGES = { a4: [210, 297], letter: [215.9, 279.4], roll: [62, 30] };
/** How far a sheet's labels may stand past its edge by rounding. */
const ROUNDING_MM = 0.05;

describe.each(PAPERS.map((paper) => [paper.words, paper] as const))('%s', (words, paper) => {
  const { page, label, columns, rows, pitch, free, codeMm } = paper;

  test('is named by what it holds', () => {
    expect([page.widthMm, page.heightMm]).toEqual(PAGES[page.name]);
    if (page.name !== 'roll')
      expect(words.endsWith(`${columns} × ${rows}, ${label.widthMm} × ${label.heightMm} mm`)).toBe(true);
  });

  test('has its labels on the page, side by side, as far from one edge as from the other', () => {
    const last = cornerOf(paper, onASheet(paper) - 1);
    const first = cornerOf(paper, 0);
    const after = {
      right: page.widthMm - last.leftMm - label.widthMm,
      below: page.heightMm - last.topMm - label.heightMm,
    };
    expect(after.right).toBeGreaterThanOrEqual(-ROUNDING_MM);
    expect(after.below).toBeGreaterThanOrEqual(-ROUNDING_MM);
    expect(Math.abs(after.right - first.leftMm)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(after.below - first.topMm)).toBeLessThanOrEqual(0.1);
    expect(pitch.acrossMm).toBeGreaterThanOrEqual(label.widthMm);
    expect(pitch.downMm).toBeGreaterThanOrEqual(label.heightMm);
  });

  test('has room for the code and twenty millimetres of words', () => {
    expect(codeMm + 2 * free.downMm).toBeLessThanOrEqual(label.heightMm);
    expect(wordsMm(paper)).toBeGreaterThanOrEqual(20);
  });

  test('has squares of half a millimetre for an address of fifty signs', () => {
    const link = `https://${'bedplate.plant-of-a-large-company.example.com:8443'.slice(0, 50)}/l/7K3M-X2QP`;
    expect(codeMm / qr(link).size).toBeGreaterThanOrEqual(LEAST_MODULE_MM);
  });
});

test('the path of a code holds just its dark modules, four free ones around', () => {
  const text = 'http://localhost:3000/l/7K3M-X2QP';
  const { size, path } = qr(text);
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'Q' });
  expect(size).toBe(modules.size + 8);
  const dark = new Set<string>();
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let at = 0; at < Number(length); at += 1) dark.add(`${Number(x) + at - 4} ${Number(y) - 4}`);
  const expected = [];
  for (let row = 0; row < modules.size; row += 1)
    for (let column = 0; column < modules.size; column += 1)
      if (modules.get(row, column)) expected.push(`${column} ${row}`);
  expect([...dark].sort()).toEqual(expected.sort());
});

test('a tag is set no larger than fits, and a short one no larger than it should be', () => {
  expect(fittedMm('P-1', 30, 8)).toBe(8);
  expect(fittedMm('W'.repeat(60), 30, 8)).toBeLessThanOrEqual(0.5);
  expect(fittedMm('SK-104-A', 30, 8)).toBeGreaterThan(5);
});

describe('how labels are to be printed', () => {
  test.each([
    [{}, { start: 1, copies: 1, part: 1 }],
    [
      { start: '5', copies: '2', part: '3' },
      { start: 5, copies: 2, part: 3 },
    ],
    [
      { start: '5', first: '9' },
      { start: 9, copies: 1, part: 1 },
    ],
    [
      { start: '9', paper: 'roll-62' },
      { start: 1, copies: 1, part: 1 },
    ],
    [{ start: ['5', '6'] }, { start: 1, copies: 1, part: 1 }],
  ])('%j is %j', (query, print) => expect(printAsked(query)).toMatchObject({ print, problems: [] }));

  test.each([['0'], ['25'], ['2.5'], ['all'], ['1e9'], ['-1']])('the first label cannot be %s', (start) => {
    expect(printAsked({ start, paper: 'a4-3x8' })).toMatchObject({
      print: { start: 1 },
      problems: [{ path: 'start', says: expect.stringContaining('no whole number from 1 to 24') }],
    });
  });

  test('a part goes on where the part before it ended', () => {
    const { print } = printAsked({ paper: 'a4-3x8', start: '3', copies: '7', part: '2' });
    // 42 records of 7 copies are 294 labels, from the third place of 24: (2 + 294) mod 24 = 8 are taken.
    expect(partOf(print)).toEqual({ skip: 42, take: 42, start: 9 });
  });
});
