import { decoderOf } from './decoder';
import type { Dialect } from './dialect';
import { decimalOf } from './find-decimal';
import { delimiterOf } from './find-delimiter';
import { encodingOf } from './find-encoding';
import { formatOf } from './find-format';
import { LIMITS } from './sheet-limits';
import { SheetRefused } from './sheet-refused';
import { openWorkbook } from './workbook';

/** As much of a file as tells its delimiter and its decimal sign. */
const HEAD = 256 * 1024;

/** How a file is written, told by its bytes and never by its name. Throws SheetRefused. */
export async function findDialect(bytes: Uint8Array): Promise<Dialect> {
  if (bytes.length > LIMITS.bytes)
    throw new SheetRefused(
      `The file has ${Math.ceil(bytes.length / 1e6)} MB; at most ${LIMITS.bytes / 1024 / 1024} MB are read. Part it in two.`,
    );
  if (formatOf(bytes) === 'xlsx') {
    const { sheets, says } = await openWorkbook(bytes);
    const names = sheets.map(({ name }) => name);
    const shown = sheets.find(({ isHidden }) => !isHidden) ?? sheets[0];
    if (shown === undefined) throw new SheetRefused('The workbook has no sheet with cells.');
    const more = names.length === 1 ? [] : [`It has ${names.length} sheets; “${shown.name}” is read.`];
    return {
      ...{
        format: 'xlsx',
        encoding: null,
        hasMark: false,
        delimiter: null,
        decimal: '.',
        sheet: shown.name,
        sheets: names,
      },
      says: [
        'It is a workbook: its figures carry no decimal sign of their own; those typed as text do.',
        ...more,
        ...says,
      ],
    };
  }
  const { encoding, hasMark, says } = encodingOf(bytes);
  const head = decoderOf(encoding, { isStrict: false })(bytes.subarray(0, HEAD), false);
  // A line that is cut off tells nothing.
  const whole = Math.max(head.lastIndexOf('\n'), head.lastIndexOf('\r')) + 1;
  const lines = bytes.length > HEAD ? head.slice(0, whole) : head;
  const { delimiter, says: parted } = delimiterOf(lines);
  const { decimal, says: figures } = decimalOf(lines, delimiter);
  return {
    ...{ format: 'csv', encoding, hasMark, delimiter, decimal, sheet: null, sheets: [] },
    says: [says, parted, figures],
  };
}
