import { Readable } from 'node:stream';
import { writeCsv } from '@/lib/sheet/write-csv';
import { writeXlsx } from '@/lib/sheet/write-xlsx';

const TYPES = {
  csv: 'text/csv; charset=utf-8',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
} as const;

/** Rows as a file to save, never to show: "sets-2026-11-25.csv". */
export function fileAnswer(
  name: string,
  format: keyof typeof TYPES,
  rows: AsyncIterable<readonly (string | number | null)[]> | Iterable<readonly (string | number | null)[]>,
): Response {
  const parts = format === 'csv' ? writeCsv(rows) : writeXlsx(name, rows);
  const day = new Date().toISOString().slice(0, 10);
  return new Response(Readable.toWeb(Readable.from(parts)) as ReadableStream, {
    headers: {
      'content-type': TYPES[format],
      'content-disposition': `attachment; filename="${name}-${day}.${format}"`,
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
    },
  });
}
