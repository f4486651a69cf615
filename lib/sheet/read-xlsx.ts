import { stylesOf } from './cell-format';
import { figureText, unescaped } from './cell-value';
import type { CellType, SheetRow } from './dialect';
import { LIMITS } from './sheet-limits';
import { SheetRefused } from './sheet-refused';
import { openWorkbook, type Workbook, type WorkbookSheet } from './workbook';
import { readPart, xmlOf } from './xml-of';

/** The rows of one sheet of a workbook (ECMA-376 part 1, 18.3), each cell as a person reads it. Throws SheetRefused. */
export async function* readXlsx(
  bytes: Uint8Array,
  name: string | null,
  signal?: AbortSignal,
): AsyncGenerator<SheetRow> {
  const book = await openWorkbook(bytes);
  const sheet =
    book.sheets.find((one) => one.name === name) ?? book.sheets.find(({ isHidden }) => !isHidden) ?? book.sheets[0];
  if (sheet === undefined) throw new SheetRefused('The workbook has no sheet with cells.');
  try {
    yield* rowsOf(book, sheet, signal);
  } finally {
    book.zip.close();
  }
}

async function* rowsOf(
  book: Workbook,
  sheet: WorkbookSheet,
  signal: AbortSignal | undefined,
): AsyncGenerator<SheetRow> {
  const strings = await sharedStrings(book);
  const styles = await stylesOf(book);
  const merged = await mergedRows(book, sheet);
  const done: SheetRow[] = [];
  let row: { line: number; cells: string[]; types: CellType[] } | null = null;
  let line = 0;
  let count = 0;
  let cell: { column: number; type: string; style: number; text: string; isRead: boolean } | null = null;
  const put = (text: string, type: CellType) => {
    if (row === null || cell === null) return;
    if (cell.column >= LIMITS.columns) {
      if (text.trim() === '') return;
      throw new SheetRefused(
        `Row ${row.line} has a cell in column ${cell.column + 1}; at most ${LIMITS.columns} columns are read.`,
      );
    }
    if (text.length > LIMITS.cell)
      throw new SheetRefused(
        `Row ${row.line}, column ${cell.column + 1} has ${text.length} characters; at most ${LIMITS.cell} are read.`,
      );
    while (row.cells.length < cell.column) {
      row.cells.push('');
      row.types.push('empty');
    }
    row.cells[cell.column] = text;
    row.types[cell.column] = text === '' ? 'empty' : type;
  };
  const reading = xmlOf(book.zip, sheet.entry, {
    open(name, attribute) {
      if (name === 'row') {
        line = Number(attribute('r') ?? line + 1);
        row = { line, cells: [], types: [] };
      } else if (name === 'c' && row !== null) {
        const ref = attribute('r');
        const column = ref === null ? row.cells.length : columnOf(ref);
        cell = { column, type: attribute('t') ?? 'n', style: Number(attribute('s') ?? '-1'), text: '', isRead: false };
      } else if (cell !== null && (name === 'v' || name === 't')) cell.isRead = true;
      else if (cell !== null && name === 'rPh') cell.isRead = false;
    },
    text(text) {
      if (cell?.isRead && cell.text.length <= LIMITS.cell) cell.text += text;
    },
    close(name) {
      if (cell !== null && (name === 'v' || name === 't')) cell.isRead = false;
      if (name === 'c' && cell !== null) {
        const { type, text, style } = cell;
        if (type === 's') put(strings[Number(text)] ?? '', 'text');
        else if (type === 'inlineStr' || type === 'str') put(unescaped(text), 'text');
        else if (type === 'b') put(text === '1' ? 'TRUE' : text === '' ? '' : 'FALSE', 'bool');
        else if (type === 'e') put(text, 'error');
        else if (type === 'd') put(text.slice(0, 10), 'date');
        else {
          const shown = figureText(text, styles[style] ?? 'plain', book.is1904);
          put(shown.text, shown.type);
        }
        cell = null;
      }
      if (name === 'row' && row !== null) {
        if (row.cells.some((text) => text.trim() !== '')) {
          count += 1;
          if (count > LIMITS.rows) throw new SheetRefused(`It has more than ${LIMITS.rows} rows: part it in two.`);
          done.push(merged.has(row.line) ? { ...row, merged: true } : row);
        }
        row = null;
      }
    },
  });
  for await (const _ of reading) {
    signal?.throwIfAborted();
    yield* done.splice(0);
  }
  yield* done;
}

/** "AB12" stands in column 27, counted from 0. */
function columnOf(ref: string): number {
  let column = 0;
  for (const letter of ref) {
    const value = letter.toUpperCase().charCodeAt(0) - 64;
    if (value < 1 || value > 26) break;
    column = column * 26 + value;
  }
  return Math.max(0, column - 1);
}

/** The strings that cells share; of a formatted one its runs together, without the reading aid of eastern scripts. */
async function sharedStrings({ zip, part }: Workbook): Promise<string[]> {
  const strings: string[] = [];
  const entry = part('xl/sharedStrings.xml');
  if (entry === null) return strings;
  let text = '';
  let isText = false;
  let isAid = false;
  await readPart(zip, entry, {
    open(name) {
      if (name === 'si') text = '';
      else if (name === 'rPh') isAid = true;
      else if (name === 't') isText = !isAid;
    },
    text(piece) {
      if (isText && text.length <= LIMITS.cell) text += piece;
    },
    close(name) {
      if (name === 't') isText = false;
      else if (name === 'rPh') isAid = false;
      else if (name === 'si') {
        if (strings.length >= LIMITS.strings)
          throw new SheetRefused(`It shares more than ${LIMITS.strings} texts between its cells.`);
        strings.push(unescaped(text));
      }
    },
  });
  return strings;
}

/** Rows in which a cell reaches over several columns. They are told behind the cells, so the part is read once more. */
async function mergedRows({ zip }: Workbook, { entry }: WorkbookSheet): Promise<Set<number>> {
  const rows = new Set<number>();
  await readPart(zip, entry, {
    open(name, attribute) {
      const [, from, line, to] =
        name === 'mergeCell' ? (/^([A-Z]+)(\d+):([A-Z]+)\d+$/.exec(attribute('ref') ?? '') ?? []) : [];
      if (from !== undefined && from !== to && rows.size < LIMITS.rows) rows.add(Number(line));
    },
  });
  return rows;
}
