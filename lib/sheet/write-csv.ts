import { stringify } from 'csv-stringify/sync';
import { guarded } from './guard';

export type Cell = string | number | boolean | null;

/** Rows written at once. */
const STEP = 500;

/** Rows as text that any program opens: UTF-8 with its mark, commas, CRLF (RFC 4180); text that looks like a formula is guarded. */
export async function* writeCsv(
  rows: AsyncIterable<readonly Cell[]> | Iterable<readonly Cell[]>,
): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder();
  yield new Uint8Array([0xef, 0xbb, 0xbf]);
  let some: Cell[][] = [];
  for await (const row of rows) {
    some.push(row.map((cell) => (typeof cell === 'string' ? guarded(cell) : cell)));
    if (some.length === STEP) {
      yield encoder.encode(asText(some));
      some = [];
    }
  }
  if (some.length > 0) yield encoder.encode(asText(some));
}

const asText = (rows: Cell[][]) =>
  stringify(rows, {
    record_delimiter: 'windows',
    quoted_match: /^\s|\s$|^$|[\r\n]/,
    cast: { boolean: (value) => (value ? 'yes' : 'no') },
  });
