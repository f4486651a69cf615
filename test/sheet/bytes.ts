import type { Readable } from 'node:stream';
import zlib from 'node:zlib';
import { ZipFile } from 'yazl';
import type { SheetRow } from '@/lib/sheet/dialect';

export async function bytesOf(parts: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const list: Uint8Array[] = [];
  for await (const part of parts) list.push(part);
  return new Uint8Array(Buffer.concat(list));
}

export async function rowsOf(rows: AsyncIterable<SheetRow>): Promise<SheetRow[]> {
  const list: SheetRow[] = [];
  for await (const row of rows) list.push(row);
  return list;
}

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const RELS = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';

/** A workbook by hand: its sheet's inside, and any other parts. */
export function workbook(sheetData: string, parts: Record<string, string | Buffer> = {}): Promise<Uint8Array> {
  return zipOf({
    'xl/workbook.xml': `<workbook ${MAIN} ${RELS}><workbookPr/><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet ${MAIN}><sheetData>${sheetData}</sheetData></worksheet>`,
    ...parts,
  });
}

export function zipOf(parts: Record<string, string | Buffer>): Promise<Uint8Array> {
  const zip = new ZipFile();
  for (const [path, content] of Object.entries(parts)) zip.addBuffer(Buffer.from(content), path);
  zip.end();
  return bytesOf(zip.outputStream as Readable);
}

/** A zip with one part that claims `claimed` bytes unpacked and is `actual` ones: what no honest program writes. */
export function lying(path: string, content: Buffer, claimed: number): Buffer {
  const packed = zlib.deflateRawSync(content);
  const crc = zlib.crc32 ? zlib.crc32(content) : 0;
  const name = Buffer.from(path);
  const head = Buffer.alloc(30);
  head.writeUInt32LE(0x04034b50, 0);
  head.writeUInt16LE(20, 4);
  head.writeUInt16LE(8, 8);
  head.writeUInt32LE(crc, 14);
  head.writeUInt32LE(packed.length, 18);
  head.writeUInt32LE(claimed, 22);
  head.writeUInt16LE(name.length, 26);
  const central = Buffer.alloc(46);
  central.writeUInt32LE(0x02014b50, 0);
  central.writeUInt16LE(20, 4);
  central.writeUInt16LE(20, 6);
  central.writeUInt16LE(8, 10);
  central.writeUInt32LE(crc, 16);
  central.writeUInt32LE(packed.length, 20);
  central.writeUInt32LE(claimed, 24);
  central.writeUInt16LE(name.length, 28);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(1, 8);
  end.writeUInt16LE(1, 10);
  end.writeUInt32LE(46 + name.length, 12);
  end.writeUInt32LE(30 + name.length + packed.length, 16);
  return Buffer.concat([head, name, packed, central, name, end]);
}
