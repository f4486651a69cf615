import { CsvError, parse } from 'csv-parse';
import { decoderOf } from './decoder';
import type { Dialect, SheetRow } from './dialect';
import { LIMITS } from './sheet-limits';
import { SheetRefused } from './sheet-refused';

/** So many bytes are decoded at once. */
const STEP = 64 * 1024;

/** The records of a text (RFC 4180, with the delimiter that was found). A quote inside an unquoted cell is a quote: 5" pump. */
export async function* readCsv(
  bytes: Uint8Array,
  { encoding, delimiter }: Pick<Dialect, 'encoding' | 'delimiter'>,
  signal?: AbortSignal,
): AsyncGenerator<SheetRow> {
  const parser = parse({
    delimiter: delimiter ?? ',',
    relax_quotes: true,
    relax_column_count: true,
    skip_empty_lines: false,
    max_record_size: LIMITS.record,
    info: true,
  });
  const feeding = feed(parser, bytes, encoding ?? 'utf-8', signal);
  let before = 0;
  let rows = 0;
  try {
    for await (const { record, info } of parser as AsyncIterable<{ record: string[]; info: { lines: number } }>) {
      const line = before + 1;
      before = info.lines;
      if (record.every((cell) => cell.trim() === '')) continue;
      rows += 1;
      if (rows > LIMITS.rows) throw new SheetRefused(`It has more than ${LIMITS.rows} rows: part it in two.`);
      if (record.length > LIMITS.columns)
        throw new SheetRefused(
          `Line ${line} has ${record.length} cells; at most ${LIMITS.columns} are read. Is the delimiter right?`,
        );
      const long = record.findIndex((cell) => cell.length > LIMITS.cell);
      if (long >= 0)
        throw new SheetRefused(
          `Line ${line}, column ${long + 1} has ${record[long]?.length} characters; at most ${LIMITS.cell} are read. Is a quote not closed?`,
        );
      yield { line, cells: record };
    }
    await feeding;
  } catch (error) {
    throw worded(error, before + 1);
  } finally {
    parser.destroy();
    await feeding.catch(() => {});
  }
}

async function feed(
  parser: ReturnType<typeof parse>,
  bytes: Uint8Array,
  encoding: NonNullable<Dialect['encoding']>,
  signal: AbortSignal | undefined,
) {
  const decode = decoderOf(encoding, { isStrict: true });
  try {
    for (let i = 0; i < bytes.length; i += STEP) {
      signal?.throwIfAborted();
      const text = decode(bytes.subarray(i, i + STEP), i + STEP < bytes.length);
      if (text.includes('\0'))
        throw new SheetRefused('It holds zero bytes: it is no text, or its encoding is another.');
      if (parser.destroyed) return;
      if (!parser.write(text)) await room(parser);
    }
    parser.end();
  } catch (error) {
    parser.destroy(
      error instanceof TypeError
        ? new SheetRefused(`Its bytes are not ${encoding}: say another encoding, or save it as UTF-8.`)
        : (error as Error),
    );
  }
}

const room = (parser: ReturnType<typeof parse>) =>
  new Promise<void>((resolve) => {
    const done = () => {
      parser.off('drain', done);
      parser.off('close', done);
      resolve();
    };
    parser.once('drain', done);
    parser.once('close', done);
  });

function worded(error: unknown, line: number): unknown {
  if (!(error instanceof CsvError)) return error;
  switch (error.code) {
    case 'CSV_MAX_RECORD_SIZE':
      return new SheetRefused(
        `From line ${line} on, one record has more than ${LIMITS.record} characters: a quote opened there is not closed, or the delimiter is another.`,
        { cause: error },
      );
    case 'CSV_QUOTE_NOT_CLOSED':
      return new SheetRefused(
        `A quote that opens on line ${/line (\d+)/.exec(error.message)?.[1] ?? line} is not closed.`,
        { cause: error },
      );
    default:
      return new SheetRefused(`Line ${line} cannot be read: a quote does not stand at the edge of its cell.`, {
        cause: error,
      });
  }
}
