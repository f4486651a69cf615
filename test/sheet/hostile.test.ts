import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findDialect } from '@/lib/sheet/find-dialect';
import { readRows } from '@/lib/sheet/read-rows';
import { LIMITS } from '@/lib/sheet/sheet-limits';
import { SheetRefused } from '@/lib/sheet/sheet-refused';
import { writeXlsx } from '@/lib/sheet/write-xlsx';
import { slowness } from '../yardstick';
import { bytesOf, lying, rowsOf, workbook, zipOf } from './bytes';

const utf8 = (text: string) => new TextEncoder().encode(text);
const cellOf = (text: string) => `<row r="1"><c r="A1" t="inlineStr"><is><t>${text}</t></is></c></row>`;

/** Reads all of it; what is refused is told by its words. */
async function read(bytes: Uint8Array): Promise<number | string> {
  try {
    return (await rowsOf(readRows(bytes, await findDialect(bytes)))).length;
  } catch (error) {
    if (error instanceof SheetRefused) return error.says;
    throw error;
  }
}

/** What reading costs: seconds of the processor, whatever else it does, and megabytes kept or taken at the end. */
async function cost(bytes: Uint8Array) {
  globalThis.gc?.();
  const before = process.memoryUsage().rss;
  const start = process.cpuUsage();
  const says = await read(bytes);
  const { user, system } = process.cpuUsage(start);
  return { says, seconds: (user + system) / 1e6, megabytes: (process.memoryUsage().rss - before) / 1e6 };
}

describe('S15 what is no honest list is refused at once and in words that help', () => {
  const zeros = Buffer.alloc(120 * 1024 * 1024, 0x20);
  const cases: [string, () => Promise<Uint8Array> | Uint8Array, RegExp][] = [
    [
      'a zip bomb',
      () => zipOf({ 'xl/workbook.xml': '<workbook/>', 'xl/worksheets/sheet1.xml': zeros }),
      /unpacks to far more/,
    ],
    [
      'a part that lies about its size',
      () => new Uint8Array(lying('xl/workbook.xml', zeros.subarray(0, 40 * 1024 * 1024), 100)),
      /damaged|not as large/,
    ],
    [
      'entities that grow',
      () =>
        workbook(cellOf('x'), {
          'xl/workbook.xml': '<!DOCTYPE b [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><workbook>&b;</workbook>',
        }),
      /document type/,
    ],
    [
      'an entity of a sheet',
      () =>
        workbook('', {
          'xl/worksheets/sheet1.xml':
            '<!DOCTYPE b [<!ENTITY a SYSTEM "file:///etc/passwd">]><worksheet><sheetData><row r="1"><c t="str"><v>&a;</v></c></row></sheetData></worksheet>',
        }),
      /document type/,
    ],
    ['macros', () => workbook(cellOf('x'), { 'xl/vbaProject.bin': 'x' }), /macros/],
    ['a workbook of the old kind', () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1]), /\.xls/],
    ['a web page', () => utf8('<html><table><tr><td>Tag</td></tr></table></html>'), /web page/],
    ['a PDF', () => utf8('%PDF-1.7'), /PDF/],
    ['a picture', () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d]), /picture/],
    ['an .ods', () => zipOf({ 'content.xml': '<x/>' }), /\.ods/],
    ['an .xlsb', () => zipOf({ 'xl/workbook.bin': 'x' }), /\.xlsb/],
    ['any other zip', () => zipOf({ 'readme.txt': 'x' }), /no workbook/],
    ['half a workbook', async () => (await workbook(cellOf('x'))).subarray(0, 300), /damaged/],
    ['nothing', () => new Uint8Array(), /empty/],
    ['zero bytes', () => utf8('Tag,kW\nA,\0\nB,2\n'), /zero bytes/],
    ['a quote that is not closed', () => utf8(`Tag,kW\nA,1\n"B,${'x,1\n'.repeat(100_000)}`), /line 3.*not closed/],
    ['a quote open at the end', () => utf8('Tag,kW\nA,1\nB,"2\n'), /line 3 is not closed/],
    ['a line of many megabytes', () => utf8(`Tag,kW\nA,${'x'.repeat(20_000_000)}\n`), /characters/],
    ['a cell too long', () => utf8(`Tag,kW\nA,${'x'.repeat(40_000)}\n`), /Line 2, column 2 has 40000/],
    [
      'a line as long as what is looked at first',
      () => utf8(`Tag,kW\nA,${'x'.repeat(250_000)}\nB,2\n`),
      /From line 2 on, one record has more/,
    ],
    ['too many columns', () => utf8(`Tag${',x'.repeat(300)}\n`), /Line 1 has 301 cells/],
    ['too many rows', () => utf8(`Tag,kW\n${'A,1\n'.repeat(LIMITS.rows + 1)}`), /more than 50000 rows/],
    ['a file too large', () => new Uint8Array(LIMITS.bytes + 1).fill(0x41), /at most 25/],
    [
      'a workbook’s cell too far right',
      () => workbook('<row r="3"><c r="ZZ3" t="str"><v>x</v></c></row>'),
      /Row 3 has a cell in column 702/,
    ],
  ];
  test.each(cases)('%s', async (_, make, words) => {
    const bytes = await make();
    const { says, seconds, megabytes } = await cost(bytes);
    expect(String(says)).toMatch(words);
    // What other tests left to be cleared away is counted with it: the least of three tells what it takes.
    if (seconds > 1)
      expect(Math.min((await cost(bytes)).seconds, (await cost(bytes)).seconds)).toBeLessThan(slowness());
    expect(megabytes).toBeLessThan(150);
  });

  test('a path that leads out of the file is not followed', async () => {
    const bytes = Buffer.from(await zipOf({ 'xl/workbook.xml': '<workbook/>', 'xx/xx/evil.xml': 'x' }));
    let at = bytes.indexOf('xx/xx/evil.xml');
    while (at >= 0) {
      bytes.write('../../evil.xml', at);
      at = bytes.indexOf('xx/xx/evil.xml');
    }
    expect(await read(new Uint8Array(bytes))).toMatch(/damaged|no sheet/);
  });

  test('links to outside are not followed: what was shown is read, and it is said', async () => {
    const bytes = await workbook(cellOf('kept'), { 'xl/externalLinks/externalLink1.xml': '<externalLink/>' });
    expect((await findDialect(bytes)).says.join(' ')).toContain('nothing is fetched');
    expect(await read(bytes)).toBe(1);
  });
});

test('whatever bytes come, they are read or refused, never thrown over', async () => {
  const good = await bytesOf(
    writeXlsx('S', [
      ['Tag', 'kW'],
      ['A-1', 1.5],
      ['A-2', 2.2],
    ]),
  );
  const spoilt = fc
    .tuple(fc.nat(good.length - 1), fc.uint8Array({ minLength: 1, maxLength: 6 }))
    .map(
      ([at, bytes]) => new Uint8Array(Buffer.concat([good.subarray(0, at), bytes, good.subarray(at + bytes.length)])),
    );
  const any = fc.oneof(fc.uint8Array({ maxLength: 400 }), spoilt, spoilt);
  await fc.assert(
    fc.asyncProperty(any, async (bytes) => {
      const outcome = await read(bytes);
      expect(['number', 'string']).toContain(typeof outcome);
    }),
    { numRuns: 600 },
  );
});
