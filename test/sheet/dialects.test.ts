import { describe, expect, test } from 'vitest';
import { findDialect } from '@/lib/sheet/find-dialect';
import { readRows } from '@/lib/sheet/read-rows';
import { rowsOf, workbook } from './bytes';

const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string, isBig: boolean, hasMark: boolean) => {
  const bytes = Buffer.from(`${hasMark ? '\uFEFF' : ''}${text}`, 'utf16le');
  return new Uint8Array(isBig ? bytes.swap16() : bytes);
};
const latin = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));

const LIST = 'Tag;Leistung;Drehzahl\nSK-1;0,75;1450\nSK-2;7,5;2900\n';

describe('encoding, delimiter and decimal sign are found', () => {
  test.each<[string, Uint8Array, object]>([
    ['semicolons with decimal commas', utf8(LIST), { delimiter: ';', decimal: ',', encoding: 'utf-8' }],
    ['commas with decimal dots', utf8('Tag,kW,rpm\nA,0.75,1450\nB,7.5,2900\n'), { delimiter: ',', decimal: '.' }],
    [
      'commas with decimal commas in quotes',
      utf8('Tag,kW,rpm\nA,"0,75",1450\nB,"7,5",2900\n'),
      { delimiter: ',', decimal: ',' },
    ],
    ['tabs', utf8('Tag\tkW\nA\t1.5\nB\t2.2\n'), { delimiter: '\t', decimal: '.' }],
    ['upright strokes', utf8('Tag|kW\nA|1.5\nB|2.2\n'), { delimiter: '|' }],
    [
      'semicolons with many commas in words',
      utf8('Tag;Note\nA;pump, old, noisy\nB;pump, new\n'),
      { delimiter: ';', decimal: null },
    ],
    ['a mark of UTF-8', utf8(`\uFEFF${LIST}`), { encoding: 'utf-8', hasMark: true, delimiter: ';' }],
    [
      'UTF-16, low byte first, with a mark',
      utf16(LIST, false, true),
      { encoding: 'utf-16le', hasMark: true, delimiter: ';' },
    ],
    ['UTF-16, high byte first, with a mark', utf16(LIST, true, true), { encoding: 'utf-16be', hasMark: true }],
    ['UTF-16 without a mark', utf16(LIST, false, false), { encoding: 'utf-16le', hasMark: false, delimiter: ';' }],
    ['Windows-1252', latin('Tag;Ort\nA;Küche\nB;Höhe 40°\n'), { encoding: 'windows-1252' }],
    ['one column', utf8('Tag\nA\nB\n'), { delimiter: ',' }],
    ['both decimal signs', utf8('Tag;kW\nA;0,75\nB;1.5\n'), { decimal: null }],
    ['thousands only', utf8('Tag;rpm\nA;1.450\nB;2.900\n'), { decimal: null }],
  ])('%s', async (_, bytes, expected) => {
    const dialect = await findDialect(bytes);
    expect(dialect).toMatchObject(expected);
    for (const says of dialect.says) expect(says).toMatch(/\.$/);
  });

  test('letters of each encoding come out as they were written', async () => {
    const text = 'Tag;Ort\nA;Küche 40°\n';
    for (const bytes of [utf8(text), latin(text), utf16(text, false, true), utf16(text, true, true)])
      expect((await rowsOf(readRows(bytes, await findDialect(bytes))))[1]).toEqual({
        line: 2,
        cells: ['A', 'Küche 40°'],
      });
  });
});

test('Windows-1252 has dashes, quotes and the euro where ISO 8859-1 has none (WHATWG Encoding, index windows-1252)', async () => {
  const bytes = Uint8Array.from([...latin('Tag;Ort\nA;'), 0x93, 0x80, 0x20, 0x96, 0x20, 0xbd, 0x94, 0x9f, 0x0a]);
  expect((await rowsOf(readRows(bytes, await findDialect(bytes))))[1]?.cells).toEqual(['A', '“€ – ½”Ÿ']);
});

test('lines are numbered as they stand in the file, whatever a cell holds', async () => {
  const bytes = utf8('Tag,Note\n\nA,"two\nlines"\nB,5" pump\n');
  expect(await rowsOf(readRows(bytes, await findDialect(bytes)))).toEqual([
    { line: 1, cells: ['Tag', 'Note'] },
    { line: 3, cells: ['A', 'two\nlines'] },
    { line: 5, cells: ['B', '5" pump'] },
  ]);
});

describe('a cell of a workbook is what a person reads in it (ECMA-376 part 1, 18.3.1.4 and 18.8.30, from memory)', () => {
  const styles = `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="0.0&quot; kW&quot;"/><numFmt numFmtId="165" formatCode="dd\\.mm\\.yyyy"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="165"/><xf numFmtId="10"/><xf numFmtId="164"/><xf numFmtId="20"/></cellXfs></styleSheet>`;
  const shared = `<sst><si><t>plain</t></si><si><r><t>in </t></r><r><t>runs</t></r><rPh><t>aid</t></rPh></si><si><t>_x0041__x000D_</t></si></sst>`;
  const cell = async (xml: string) => {
    const bytes = await workbook(`<row r="7">${xml}</row>`, {
      'xl/styles.xml': styles,
      'xl/sharedStrings.xml': shared,
    });
    const [row] = await rowsOf(readRows(bytes, await findDialect(bytes)));
    return row === undefined ? null : { line: row.line, cells: row.cells, types: row.types };
  };
  test.each([
    ['<c r="A7" t="s"><v>0</v></c>', ['plain'], ['text']],
    ['<c r="A7" t="s"><v>1</v></c>', ['in runs'], ['text']],
    ['<c r="A7" t="s"><v>2</v></c>', ['A\r'], ['text']],
    ['<c r="C7"><v>7.4999999999999997E-2</v></c>', ['', '', '0.075'], ['empty', 'empty', 'number']],
    // 45 000 days after 1899-12-30 is 2023-03-15; day 60 is the 29 February 1900 that never was; day 1 is 1 January 1900.
    ['<c r="A7" s="1"><v>45000</v></c>', ['2023-03-15'], ['date']],
    ['<c r="A7" s="2"><v>1</v></c>', ['1900-01-01'], ['date']],
    ['<c r="A7" s="2"><v>60</v></c>', ['1900-02-29'], ['date']],
    ['<c r="A7" s="3"><v>0.915</v></c>', ['91.5 %'], ['number']],
    ['<c r="A7" s="4"><v>7.5</v></c>', ['7.5'], ['number']],
    ['<c r="A7" s="5"><v>0.5</v></c>', ['12:00'], ['date']],
    ['<c r="A7" t="b"><v>1</v></c>', ['TRUE'], ['bool']],
    ['<c r="A7" t="e"><v>#N/A</v></c>', ['#N/A'], ['error']],
    ['<c r="A7" t="str"><f>1+1</f><v>two</v></c>', ['two'], ['text']],
    ['<c r="A7" t="inlineStr"><is><t>inside</t></is></c>', ['inside'], ['text']],
    ['<c t="inlineStr"><is><t>a</t></is></c><c t="inlineStr"><is><t>b</t></is></c>', ['a', 'b'], ['text', 'text']],
  ])('%s', async (xml, cells, types) => {
    expect(await cell(xml)).toEqual({ line: 7, cells, types });
  });

  test('days from 1904 are counted from there', async () => {
    const bytes = await workbook('<row r="1"><c r="A1" s="1"><v>43538</v></c></row>', {
      'xl/styles.xml': styles,
      'xl/workbook.xml': `<workbook xmlns:r="x"><workbookPr date1904="1"/><sheets><sheet name="D" r:id="rId1"/></sheets></workbook>`,
    });
    const [row] = await rowsOf(readRows(bytes, await findDialect(bytes)));
    expect(row?.cells).toEqual(['2023-03-15']);
  });
});
