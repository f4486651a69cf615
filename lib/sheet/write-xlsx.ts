import { Readable } from 'node:stream';
import { ZipFile } from 'yazl';
import { escapedText } from './cell-value';
import type { Cell } from './write-csv';

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DOC = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** Style 1 is text: what looks like a figure, a day or a formula stays as it is written. */
const STYLES = `${HEAD}<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="49" applyNumberFormat="1"/></cellXfs></styleSheet>`;

/** Rows as a workbook of one sheet (ECMA-376), written as they come. Tags, serials and frames are text. */
export function writeXlsx(
  sheet: string,
  rows: AsyncIterable<readonly Cell[]> | Iterable<readonly Cell[]>,
): AsyncIterable<Uint8Array> {
  const zip = new ZipFile();
  const name = escapedText(sheet.replaceAll(/[\\/?*[\]:]/g, ' ').slice(0, 31)).replaceAll('"', '&quot;');
  const add = (path: string, text: string) => zip.addBuffer(Buffer.from(text), path);
  add(
    '[Content_Types].xml',
    `${HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${TYPE}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/></Types>`,
  );
  add(
    '_rels/.rels',
    `${HEAD}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${DOC}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  );
  add(
    'xl/workbook.xml',
    `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${DOC}"><sheets><sheet name="${name}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  );
  add(
    'xl/_rels/workbook.xml.rels',
    `${HEAD}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${DOC}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${DOC}/styles" Target="styles.xml"/></Relationships>`,
  );
  add('xl/styles.xml', STYLES);
  const body = Readable.from(sheetXml(rows));
  const out = zip.outputStream as Readable;
  body.once('error', (error) => out.destroy(error));
  zip.addReadStream(body, 'xl/worksheets/sheet1.xml');
  zip.end();
  return out;
}

async function* sheetXml(rows: AsyncIterable<readonly Cell[]> | Iterable<readonly Cell[]>): AsyncGenerator<string> {
  let text = `${HEAD}<worksheet xmlns="${MAIN}"><sheetData>`;
  for await (const row of rows) {
    text += `<row>${row.map(cellXml).join('')}</row>`;
    if (text.length > 64_000) {
      yield text;
      text = '';
    }
  }
  yield `${text}</sheetData></worksheet>`;
}

function cellXml(cell: Cell): string {
  if (cell === null || cell === '') return '<c/>';
  if (typeof cell === 'number') return `<c><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c t="inlineStr" s="1"><is><t>${cell ? 'yes' : 'no'}</t></is></c>`;
  return `<c t="inlineStr" s="1"><is><t xml:space="preserve">${escapedText(cell)}</t></is></c>`;
}
