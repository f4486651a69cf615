import { type Entry, fromBufferPromise, type ZipFile } from 'yauzl';
import { LIMITS } from './sheet-limits';
import { SheetRefused } from './sheet-refused';
import { readPart } from './xml-of';

export interface WorkbookSheet {
  name: string;
  entry: Entry;
  isHidden: boolean;
}

export interface Workbook {
  zip: ZipFile;
  sheets: WorkbookSheet[];
  /** Days count from 1904. */
  is1904: boolean;
  part(path: string): Entry | null;
  /** What is worth saying of it. */
  says: string[];
}

const DAMAGED = 'The workbook is damaged or not whole: open it in the spreadsheet program and save it again.';

/** Opens a workbook (ECMA-376 part 1, 18.2) after looking at what it claims to hold. Throws SheetRefused. */
export async function openWorkbook(bytes: Uint8Array): Promise<Workbook> {
  const { zip, parts } = await unzip(bytes);
  const part = (path: string) => parts.get(path.replace(/^\//, '').toLowerCase()) ?? null;
  const main = part('xl/workbook.xml');
  if (main === null) throw new SheetRefused(notAWorkbook(parts));
  const named: { name: string; id: string; isHidden: boolean }[] = [];
  let is1904 = false;
  await readPart(zip, main, {
    open(name, attribute) {
      if (name === 'workbookPr') is1904 = /^(1|true)$/.test(attribute('date1904') ?? '');
      if (name !== 'sheet') return;
      const id = attribute('r:id') ?? attribute('id');
      if (id !== null)
        named.push({
          name: attribute('name') ?? 'sheet',
          id,
          isHidden: attribute('state') !== null && attribute('state') !== 'visible',
        });
    },
  });
  const targets = await targetsOf(zip, part('xl/_rels/workbook.xml.rels'));
  const sheets = named.flatMap(({ name, id, isHidden }) => {
    const target = targets.get(id);
    const entry = target === undefined ? null : part(target.startsWith('/') ? target : `xl/${target}`);
    return entry === null ? [] : [{ name: name.slice(0, 80), entry, isHidden }];
  });
  if (sheets.length === 0) throw new SheetRefused('The workbook has no sheet with cells.');
  const isLinked = [...parts.keys()].some((path) => path.startsWith('xl/externallinks/'));
  const hidden = sheets.filter((sheet) => sheet.isHidden).length;
  return {
    zip,
    sheets,
    is1904,
    part,
    says: [
      ...(isLinked
        ? ['It has links to other workbooks: what their cells showed when it was saved is read, nothing is fetched.']
        : []),
      ...(hidden > 0 ? [`${hidden} of its sheets are hidden.`] : []),
    ],
  };
}

/** Looks through the directory of the file, which says how large each part will be; a part that grows larger is refused as it is read. */
async function unzip(bytes: Uint8Array): Promise<{ zip: ZipFile; parts: Map<string, Entry> }> {
  const parts = new Map<string, Entry>();
  try {
    const zip = await fromBufferPromise(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), {
      validateEntrySizes: true,
      strictFileNames: false,
      autoClose: false,
    });
    let unpacked = 0;
    let count = 0;
    for await (const entry of zip.eachEntry() as AsyncIterable<Entry>) {
      count += 1;
      unpacked += entry.uncompressedSize;
      if (count > LIMITS.parts)
        throw new SheetRefused(`The workbook has more than ${LIMITS.parts} parts: it is no plain workbook.`);
      checkSize(entry, unpacked);
      if (entry.isEncrypted()) throw new SheetRefused('The workbook is behind a password: save it without one.');
      const path = entry.fileName.toLowerCase();
      if (path.endsWith('vbaproject.bin'))
        throw new SheetRefused('The workbook holds macros: save it as .xlsx, which has none.');
      if (parts.has(path)) throw new SheetRefused(DAMAGED);
      parts.set(path, entry);
    }
    return { zip, parts };
  } catch (error) {
    throw error instanceof SheetRefused ? error : new SheetRefused(DAMAGED, { cause: error });
  }
}

function checkSize({ uncompressedSize, compressedSize }: Entry, unpacked: number): void {
  const isBomb = uncompressedSize > 1024 * 1024 && uncompressedSize > LIMITS.ratio * Math.max(1, compressedSize);
  if (isBomb || unpacked > LIMITS.unpacked)
    throw new SheetRefused('The workbook unpacks to far more than a register of motors can hold: it is not read.');
}

function notAWorkbook(parts: ReadonlyMap<string, Entry>): string {
  if (parts.has('content.xml')) return 'It is a workbook of another kind (.ods): save it as .xlsx or CSV.';
  if (parts.has('word/document.xml')) return 'It is a text document: save the table as .xlsx or CSV.';
  if ([...parts.keys()].some((path) => path.endsWith('.bin') && path.startsWith('xl/')))
    return 'It is a binary workbook (.xlsb): save it as .xlsx or CSV.';
  return 'It is a packed file, but no workbook: unpack it first.';
}

async function targetsOf(zip: ZipFile, rels: Entry | null): Promise<Map<string, string>> {
  const targets = new Map<string, string>();
  if (rels === null) return targets;
  await readPart(zip, rels, {
    open(name, attribute) {
      const [id, target] = [attribute('Id'), attribute('Target')];
      if (name === 'Relationship' && id !== null && target !== null && attribute('TargetMode') !== 'External')
        targets.set(id, target);
    },
  });
  return targets;
}
