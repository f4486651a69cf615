import type { ZipFile } from 'yauzl';
import type { Workbook } from './workbook';
import { readPart } from './xml-of';

export type Shown = 'plain' | 'date' | 'moment' | 'time' | 'percent';

/** Formats that every program knows without their being written (ECMA-376 part 1, 18.8.30; 27 to 36 and 50 to 58 are days in eastern editions). */
const BUILT_IN: Record<number, Shown> = {
  9: 'percent',
  10: 'percent',
  14: 'date',
  15: 'date',
  16: 'date',
  17: 'date',
  18: 'time',
  19: 'time',
  20: 'time',
  21: 'time',
  22: 'moment',
  45: 'time',
  46: 'time',
  47: 'time',
};
for (let id = 27; id <= 36; id += 1) BUILT_IN[id] = 'date';
for (let id = 50; id <= 58; id += 1) BUILT_IN[id] = 'date';

/** How the figures of each cell style are shown, by the style's number. */
export async function stylesOf({ zip, part }: Workbook): Promise<Shown[]> {
  const entry = part('xl/styles.xml');
  if (entry === null) return [];
  return readStyles(zip, entry);
}

async function readStyles(zip: ZipFile, entry: NonNullable<ReturnType<Workbook['part']>>): Promise<Shown[]> {
  const own = new Map<number, Shown>();
  const styles: Shown[] = [];
  let inCells = false;
  await readPart(zip, entry, {
    open(name, attribute) {
      if (name === 'cellXfs') inCells = true;
      const id = Number(attribute('numFmtId') ?? '0');
      if (name === 'numFmt') own.set(id, shownBy(attribute('formatCode') ?? ''));
      if (name === 'xf' && inCells) styles.push(own.get(id) ?? BUILT_IN[id] ?? 'plain');
    },
    close(name) {
      if (name === 'cellXfs') inCells = false;
    },
  });
  return styles;
}

/** What a written format shows: its letters outside quotes, brackets and after strokes tell. */
export function shownBy(code: string): Shown {
  const [first = ''] = code.split(';');
  const bare = first
    .replaceAll(/"[^"]*"|\\.|_.|\*./g, '')
    .replaceAll(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
    .toLowerCase();
  if (/general|^@$/.test(bare)) return 'plain';
  const hasDay = /[yd]/.test(bare) || /m{3,}/.test(bare) || (/m/.test(bare) && !/[hs]/.test(bare));
  const hasTime = /[hs]/.test(bare);
  if (hasDay && !/[#0?]/.test(bare.replaceAll(/s\.0+/g, ''))) return hasTime ? 'moment' : 'date';
  if (hasTime && !/#/.test(bare)) return 'time';
  return bare.includes('%') ? 'percent' : 'plain';
}
