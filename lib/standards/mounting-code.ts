import type { Problem, Reading } from '@/lib/plant/reading';
import type { Holding } from './dimension';
import { LONGEST_TEXT, plainText } from './plain-text';
import { type IecMountingCodesRow, iecMountingCodes } from './tables/iec-mounting-codes';

/** How a motor is held, as a mounting code or plain words tell it. */
export interface Mounting {
  /** As it should be written, e.g. "IM B35". */
  name: string;
  /** Evidence that the frame is an IEC one. */
  isIec: boolean;
  feet: boolean | null;
  /** FF or FT; none: no face at the drive end; null: not told, or one of the rare faces without a number. */
  face: 'FF' | 'FT' | 'none' | null;
  /** Null: the frame has to tell. */
  hasFace: boolean | null;
  shaft: Holding['shaft'];
  positions: Holding['positions'];
  /** Raised feet, or no drive-end shield: the frame's own foot dimensions do not hold. */
  hasSpecialFeet: boolean;
  /** Conical shaft end (last digit 3 or 4 of Code II). */
  isTaper: boolean;
  /** Terminal box side seen from the drive end, feet down; only the NEMA assembly symbols tell it. */
  terminalBox: 'left' | 'right' | 'top' | null;
}

/**
 * Reads IM Code I or II (IEC 60034-7), several at once ("B3/B5" is feet and flange, "B5/V1" one motor for both positions),
 * a NEMA assembly symbol ("F-1", "W-2", "C-1") or plain words. No position is added that the code does not name: turning
 * a motor is allowed only with checks (canopy, drains, bearings, seal).
 */
export function mountingCode(text: string): Reading<Mounting> {
  const typed = text.trim().slice(0, LONGEST_TEXT) || null;
  if (text.length > LONGEST_TEXT)
    return { ok: false, problems: [{ path: 'mounting', value: typed, says: 'is longer than any mounting code' }] };
  const clean = plainText(text);
  const known = WORDS.get(clean.replaceAll(/[ -]+/g, ' ')) ?? nemaAssembly(clean);
  if (known) return { ok: true, value: known };

  const parts = clean.replaceAll(/[()]/g, '/').split(/[/,;+]|\s(?=IM)/);
  const codes: Mounting[] = [];
  const problems: Problem[] = [];
  let letter = '';
  for (const part of parts.map((one) =>
    one
      .trim()
      .replace(/^IM\s*-?/, '')
      .replaceAll(/[\s-]/g, ''),
  )) {
    if (part === '') continue;
    // "B3/5" and "V5/6": the letter carries over.
    const key = /^\d{1,2}$/.test(part) ? letter + part : part;
    letter = key[0] ?? '';
    const code = imCode(key);
    if (code) codes.push(code);
    else problems.push({ path: 'mounting', value: parts.length === 1 ? typed : part, says: NOT_UNDERSTOOD });
  }
  const [first, ...others] = codes;
  if (problems.length > 0) return { ok: false, problems };
  if (!first) return { ok: false, problems: [{ path: 'mounting', value: typed, says: NOT_UNDERSTOOD }] };
  return others.reduce<Reading<Mounting>>((so, next) => (so.ok ? both(so.value, next, text) : so), {
    ok: true,
    value: first,
  });
}

const NOT_UNDERSTOOD =
  'is not a mounting known here: write an IM code (IM B3, IM B35, IM 3001), a NEMA assembly (F-1, W-2) or "foot", "face", "foot and face"';

const plain = {
  isIec: false,
  hasSpecialFeet: false,
  isTaper: false,
  terminalBox: null,
  shaft: null,
  positions: ['horizontal'],
} as const satisfies Partial<Mounting>;
const footed: Mounting = { ...plain, name: 'foot', feet: true, face: null, hasFace: null };
const footless: Mounting = { ...plain, name: 'face', feet: false, face: null, hasFace: true };
const FOOT_AND_FACE: Mounting = { ...footed, name: 'foot and face', hasFace: true };
const WORDS = new Map<string, Mounting>([
  ...['FOOT', 'FEET', 'RIGID', 'RIGID BASE', 'FOOT MOUNTED'].map((word): [string, Mounting] => [word, footed]),
  ...['FOOT AND FACE', 'FACE AND FOOT'].map((word): [string, Mounting] => [word, FOOT_AND_FACE]),
  ...['FACE', 'FOOTLESS', 'NO FEET', 'ROUND BODY', 'FACE ONLY'].map((word): [string, Mounting] => [word, footless]),
]);

/** NEMA MG 1 Figure 4-6: F floor, W wall, C ceiling; F-1 box left, F-2 right, F-3 top, seen from the drive end. */
function nemaAssembly(text: string): Mounting | null {
  const match = /^([FWC])[\s-]?([1-8])$/.exec(text);
  if (!match) return null;
  const [, letter, digit] = match;
  const name = `${letter}-${digit}`;
  if (letter === 'F') {
    const terminalBox = digit === '1' ? 'left' : digit === '2' ? 'right' : digit === '3' ? 'top' : null;
    return terminalBox && { ...footed, name, terminalBox, shaft: 'horizontal' };
  }
  if (letter === 'C')
    return Number(digit) > 2 ? null : { ...footed, name, shaft: 'horizontal', positions: ['ceiling'] };
  // W-5 to W-8 stand upright; whether the shaft points up or down is in the figure, not in the symbol.
  const isUpright = Number(digit) > 4;
  return { ...footed, name, shaft: isUpright ? null : 'horizontal', positions: ['wall'] };
}

const byCode = new Map<string, IecMountingCodesRow>(
  iecMountingCodes.rows.flatMap((row) => [
    [row.codeI.replace('IM ', ''), row],
    [row.codeII[0].replace('IM ', '').slice(0, 3), row],
  ]),
);

function imCode(key: string): Mounting | null {
  const isNumber = /^\d{3}[1-4]$/.test(key);
  const row = byCode.get(isNumber ? key.slice(0, 3) : key);
  if (!row) return null;
  const shaft = row.shaft === 'horizontal' ? 'horizontal' : row.shaft === 'vertical down' ? 'down' : 'up';
  const face = faceOf(row.flange);
  const feetAt = row.feetPosition?.startsWith('wall')
    ? 'wall'
    : row.feetPosition?.startsWith('ceiling')
      ? 'ceiling'
      : null;
  return {
    name: isNumber ? `IM ${key}` : row.codeI,
    isIec: true,
    feet: row.feet,
    face,
    hasFace: face === null ? null : isFlange(face),
    shaft,
    // A wall or ceiling motor with a horizontal shaft was not built to stand on the floor: only its own place is listed.
    positions: feetAt === null ? [shaft] : shaft === 'horizontal' ? [feetAt] : [shaft, feetAt],
    hasSpecialFeet: row.flange.includes('raised feet') || row.flange.startsWith('frame face'),
    isTaper: isNumber && Number(key[3]) > 2,
    terminalBox: null,
  };
}

function faceOf(flange: string): Mounting['face'] {
  if (flange === 'FT') return 'FT';
  if (flange === 'FF' || flange === 'FF; raised feet') return 'FF';
  // A flange on the other end leaves the drive end without a face.
  if (flange === 'none' || flange === 'none; raised feet' || flange.includes('non-drive end')) return 'none';
  return null;
}

/** Two codes on one motor: what either gives, and the positions of both. */
function both(a: Mounting, b: Mounting, text: string): Reading<Mounting> {
  if (a.face !== b.face && isFlange(a.face) && isFlange(b.face)) {
    const says = `${a.name} has free holes and ${b.name} tapped ones or the other way round: one drive end has one of them`;
    return { ok: false, problems: [{ path: 'mounting', value: text, says }] };
  }
  return {
    ok: true,
    value: {
      ...a,
      name: isSame(a, b) ? a.name : `${a.name}/${b.name.replace('IM ', '')}`,
      hasFace: a.hasFace === true || b.hasFace === true ? true : a.hasFace,
      feet: a.feet === true || b.feet === true ? true : a.feet,
      face: isFlange(a.face) ? a.face : isFlange(b.face) ? b.face : a.face,
      shaft: a.shaft === b.shaft ? a.shaft : null,
      positions: [...new Set([...a.positions, ...b.positions])],
      hasSpecialFeet: a.hasSpecialFeet || b.hasSpecialFeet,
      isTaper: a.isTaper || b.isTaper,
    },
  };
}

/** Code I and Code II of one mounting, as plates often print them together. */
const isSame = (a: Mounting, b: Mounting): boolean =>
  a.feet === b.feet &&
  a.face === b.face &&
  a.shaft === b.shaft &&
  a.hasSpecialFeet === b.hasSpecialFeet &&
  a.isTaper === b.isTaper &&
  a.positions.join() === b.positions.join();

const isFlange = (face: Mounting['face']): boolean => face === 'FF' || face === 'FT';
