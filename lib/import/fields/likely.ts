import { enclosureMinimum } from '@/lib/standards/enclosure-minimum';
import { frameName } from '@/lib/standards/frame-name';
import type { Shape } from '../field';
import { normalHeading } from '../normal-heading';

/**
 * How likely a text stands in a column of this field, from 0 to 1, where nothing but the text tells. The figures are
 * this project's judgement: common practice, no source.
 */
export function likely(id: string, shape: Shape): (text: string) => number {
  const patterns = PATTERNS[id];
  const byWord = shape.as === 'word' && !shape.isNumber ? spellings(shape.words) : null;
  const special = SPECIAL[id];
  return (text) => {
    const told = text.trim();
    if (told === '' || told.length > LONGEST_TELLING) return 0;
    if (special) return special(told);
    for (const [pattern, chance] of patterns ?? []) if (pattern.test(told)) return chance;
    // A lone letter says too little: "B" is a design, a class, a way.
    return byWord !== null && told.length > 2 && byWord.has(normalHeading(told)) ? 0.8 : 0;
  };
}

const LONGEST_TELLING = 60;
const spellings = (words: Readonly<Record<string, readonly string[]>>) =>
  new Set(Object.entries(words).flatMap(([value, others]) => [value, ...others].map(normalHeading)));

const NOMINAL =
  '(?:110|115|120|127|190|200|208|220|230|240|277|380|400|415|420|440|460|480|500|525|550|575|600|660|690)';

const PATTERNS: Readonly<Record<string, readonly [RegExp, number][]>> = {
  tag: [
    [/^(?!IP|IM|M-?\d)[A-Z]{1,4}[-_. ]\d{2,5}[A-Z]?$/i, 0.8],
    [/^(?!IP|IM)[A-Z\d]{1,6}(?:[-_.][A-Z\d]{1,6}){1,4}$/i, 0.65],
  ],
  plantNumber: [
    [/^M(?:OT|TR)?[-_. ]?\d{2,6}$/i, 0.85],
    [/^[A-Z]{1,4}[-_. ]\d{2,6}[A-Z]?$/i, 0.7],
  ],
  ip: [[/^IP[ -]?[0-6X][0-9X]K?$/i, 0.98]],
  im: [
    [/^IM ?(?:[BV] ?\d{1,2}|\d{4})/i, 0.98],
    [/^[BV](?:3|5|6|7|8|14|15|35|34|1|18)(?:\/|$)/i, 0.85],
  ],
  power: [[/^\d[\d.,/½¼¾ -]{0,12}\s?(?:HP|kW|PS|CV)\.?$/i, 0.98]],
  volts: [
    [new RegExp(`^${NOMINAL}(?:[/-]${NOMINAL}){0,2} ?V(?:AC|olts?)?$`, 'i'), 0.98],
    [new RegExp(`^${NOMINAL}(?:[/-]${NOMINAL}){1,2}$`), 0.95],
    [new RegExp(`^${NOMINAL}$`), 0.8],
  ],
  hertz: [
    [/^(?:50|60|50\/60) ?Hz$/i, 0.99],
    [/^(?:50|60|50\/60)$/, 0.85],
  ],
  rpm: [
    [/^\d[\d.,/ ]{2,10}\s?(?:rpm|min-1|r\/min|1\/min)$/i, 0.98],
    [/^(?:3[,. ]?[456]\d\d|2[,. ]?[89]\d\d|1[,. ]?7\d\d|1[,. ]?4\d\d|1[,. ]?1\d\d|9\d\d|8[5-9]\d|7[0-4]\d)$/, 0.78],
  ],
  amps: [[/^\d[\d.,/]{0,10} ?A(?:mps?)?$/i, 0.95]],
  poles: [[/^(?:2|4|6|8|10|12)[ -]?p(?:oles?)?$/i, 0.95]],
  phases: [[/^[13] ?(?:~|-?ph(?:ase)?)$/i, 0.95]],
  duty: [[/^(?:S(?:[1-9]|10)|CONT(?:INUOUS)?)$/i, 0.95]],
  insulation: [[/^(?:CL(?:ASS)?\.? ?[ABEFHNR]|[FH])$/i, 0.75]],
  massKg: [[/^\d[\d.,]{0,7} ?(?:kg|lbs?)$/i, 0.9]],
  ambientC: [[/^\d{2,3} ?°? ?[CF]$/i, 0.9]],
  efficiencyPct: [[/^\d{2}[.,]?\d{0,2} ?%$/, 0.8]],
  shelf: [[/^[^/]{2,30} \/ [^/]{1,20}$/, 0.75]],
};

const SPECIAL: Readonly<Record<string, (text: string) => number>> = {
  frame: (text) => (/^\d{1,3}$/.test(text) || !/\d{2}/.test(text) ? 0 : frameName(text).ok ? 0.95 : 0),
  enclosure: (text) => (enclosureMinimum(text) ? 0.95 : 0),
};
