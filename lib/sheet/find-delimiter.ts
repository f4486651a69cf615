import { DELIMITERS, type Dialect } from './dialect';

type Delimiter = NonNullable<Dialect['delimiter']>;

/** As many records as are counted. */
const COUNTED = 200;

const WORDS: Record<Delimiter, string> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright strokes' };

/** The sign that parts the cells: the one by which most records have the same number of them, more than one. */
export function delimiterOf(text: string): { delimiter: Delimiter; says: string } {
  const found = DELIMITERS.map((delimiter) => ({ delimiter, ...evenness(counts(text, delimiter)) }))
    .filter(({ columns }) => columns > 1)
    // A comma is in figures too, so of two that part alike evenly the other one is taken.
    .toSorted(
      (a, b) => b.share - a.share || ORDER.indexOf(a.delimiter) - ORDER.indexOf(b.delimiter) || b.columns - a.columns,
    );
  const [best] = found;
  if (best === undefined) return { delimiter: ',', says: 'No sign parts its cells: it has one column.' };
  return { delimiter: best.delimiter, says: `Its cells are parted by ${WORDS[best.delimiter]}.` };
}

const ORDER: readonly Delimiter[] = ['\t', ';', '|', ','];

/** The number of cells of each record, quotes minded. */
function counts(text: string, delimiter: string): number[] {
  const found: number[] = [];
  let cells = 1;
  let isQuoted = false;
  let isBlank = true;
  let atStart = true;
  for (let i = 0; i < text.length && found.length < COUNTED; i += 1) {
    const sign = text[i];
    if (isQuoted) {
      if (sign === '"' && text[i + 1] === '"') i += 1;
      else if (sign === '"') isQuoted = false;
    } else if (sign === '"' && atStart) {
      isQuoted = true;
      isBlank = false;
    } else if (sign === delimiter) cells += 1;
    else if (sign === '\n' || sign === '\r') {
      if (sign === '\r' && text[i + 1] === '\n') i += 1;
      if (!isBlank || cells > 1) found.push(cells);
      cells = 1;
      isBlank = true;
    } else isBlank = false;
    atStart = sign === delimiter || sign === '\n' || sign === '\r';
  }
  if (!isBlank || cells > 1) found.push(cells);
  return found;
}

/** The usual number of cells, and the share of records that have it. */
function evenness(list: readonly number[]): { columns: number; share: number } {
  const often = new Map<number, number>();
  for (const count of list) often.set(count, (often.get(count) ?? 0) + 1);
  const [columns = 1, times = 0] = [...often].toSorted(([a, x], [b, y]) => y - x || b - a)[0] ?? [];
  return { columns, share: Math.round((times / Math.max(1, list.length)) * 20) / 20 };
}
