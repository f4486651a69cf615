import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, readEach, textProblem, understood } from './reading-of-text';

/** One voltage as stamped: a figure or a range, and the connection written beside it ("D", "Y", "Δ"). */
export interface WrittenVolts {
  volts: number | null;
  voltsMin: number | null;
  voltsMax: number | null;
  connection: 'star' | 'delta' | 'double-star' | null;
}

/** "460", "230/460 V", "208-230/460", "400/690 V Δ/Y", "380-420Y/220-240D": every voltage stamped, in the order written. */
export function readVolts(text: string): ReadingOfText<WrittenVolts[]> {
  let bare = text.trim().replace(/[∆△]/g, 'Δ');
  const isEachTold = bare.split('/').every((part) => ENDS_IN_LETTER.test(part));
  const after = isEachTold ? null : BEHIND.exec(bare);
  const before = isEachTold ? null : BEFORE.exec(bare);
  const letters = (after ?? before)?.[1];
  if (letters !== undefined) bare = after ? bare.slice(0, after.index) : bare.slice(before?.[0].length);
  bare = bare.replace(UNIT, '').trim();
  if (bare === '') return notUnderstood(text, 'has no figure for the voltage');
  const read = readEach(bare.split('/'), oneVoltage);
  if (!read.ok || letters === undefined) return read;
  const connections = letters.split('/').map((one) => connectionOf(one.trim()));
  if (connections.length !== read.value.length || read.value.some(({ connection }) => connection !== null))
    return {
      ok: false,
      problems: [textProblem(text, `names ${connections.length} connections for ${read.value.length} voltages`)],
    };
  return understood(
    read.value.map((one, i) => ({ ...one, connection: connections[i] ?? null })),
    read.doubts,
  );
}

/** How a connection is stamped: star, delta or double star. */
export const LETTER = '(?:ΔΔ|YY|Δ|Y|D|star|delta|wye)';
const UNIT = /\s?(?:volts?|vac|v\s?~|v)\.?$/i;
/** Letters behind the unit ("400/690 V Δ/Y"); a lone letter glued to a lone figure is read with the figure. */
const BEHIND = new RegExp(`(?<=v(?:olts?)?\\.?\\s?|\\s)(${LETTER}(?:\\s?/\\s?${LETTER})*)$`, 'i');
/** "400 Δ/690 Y": every voltage carries its own letter, read with it. */
const ENDS_IN_LETTER = new RegExp(`\\d.*${LETTER}$`, 'i');
const BEFORE = new RegExp(`^(${LETTER}(?:\\s?/\\s?${LETTER})*)\\s?(?=\\d)`, 'i');
const GLUED = new RegExp(`\\s?(${LETTER})$`, 'i');

function oneVoltage(part: string): ReadingOfText<WrittenVolts> {
  const plain = part.trim().replace(UNIT, '');
  const letter = GLUED.exec(plain);
  const connection = letter ? connectionOf(letter[1] as string) : null;
  const ends = readEach((letter ? plain.slice(0, letter.index) : plain).replace(UNIT, '').split('-'), (end) =>
    readNumber(end, BOUNDS),
  );
  if (!ends.ok) return ends;
  const [low, high, ...more] = ends.value;
  if (low === undefined || more.length > 0) return notUnderstood(part, 'is not a voltage or a range of two');
  if (high === undefined) return understood({ volts: low, voltsMin: null, voltsMax: null, connection }, ends.doubts);
  if (low >= high) return notUnderstood(part, 'is not a range: the first voltage is not below the second');
  return understood({ volts: null, voltsMin: low, voltsMax: high, connection }, ends.doubts);
}

const BOUNDS = { min: 5, max: 15_000 };

function connectionOf(letter: string): WrittenVolts['connection'] {
  const capital = letter.toUpperCase();
  if (capital === 'YY') return 'double-star';
  if (capital === 'Y' || capital === 'STAR' || capital === 'WYE') return 'star';
  return capital === 'Δ' || capital === 'D' || capital === 'DELTA' ? 'delta' : null;
}
