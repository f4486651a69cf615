import type { Reading } from '@/lib/plant/reading';
import type { NemaFaceLetters, NemaFrameName } from './frame-text';
import { isNemaNumber, seriesOf } from './nema-number';

/** Reads a NEMA frame such as "184TC", "L56HC", "182/4T", "284TSCZ" (NEMA MG 1 4.2). */
export function nemaFrameName(core: string): Reading<NemaFrameName> {
  const fail = (says: string, value: string | null = core): Reading<never> => ({
    ok: false,
    problems: [{ path: 'frame', value, says }],
  });
  const joined = core.replaceAll(' ', '');
  const match = /^(?:[A-Z]{1,4}\d?-|[A-Z]{0,4}|\d-)(\d{2,4})(T?)(?:\/(\d{1,4})|-(\d)(?=T))?([A-Z-]*)$/.exec(joined);
  if (!match) return fail('is not a frame known here: write a frame such as 184TC (NEMA) or 112M (IEC)', null);
  const [, digits = '', early = '', slashed, dashed, late = ''] = match;
  const first = Number(digits);
  if (!isNemaNumber(first)) return fail(`${first} is not a NEMA frame number`, null);
  // Letters before the number are the maker's and are dropped, but a series letter there is likely one put in the wrong place.
  const before = /^([TU][SCD]*)(?=\d)/.exec(joined)?.[1];
  if (before !== undefined)
    return fail(
      `has its letters before the number: write ${digits}${before}${early}${late}, or leave the ${before} out if it is the maker's`,
    );
  const second = secondOf(digits, slashed ?? dashed);
  if (second !== null && (!isNemaNumber(second) || seriesOf(second) !== seriesOf(first)))
    return fail(`${digits} and ${slashed ?? dashed} are not two lengths of one NEMA series, as in 182/4T`);

  // "182T/184T" writes the T twice.
  const after = late.replaceAll('-', '');
  const letters = `${early}${early !== '' && slashed !== undefined ? after.replace(/^T/, '') : after}`;
  const isSmall = first < 100;
  const told = lettersOf(letters, isSmall);
  if (told.left !== '')
    return fail(`"${told.left}" is not understood in the letters "${letters}" after NEMA frame ${digits}`);
  const { generation: letter, ...suffixes } = told.value;
  const isPump = suffixes.face !== null && suffixes.face !== 'C' && suffixes.face !== 'CH' && suffixes.face !== 'D';
  if (isSmall && letter !== null)
    return fail(`${digits}${letter} is not a NEMA frame: ${digits} has no ${letter} series`);
  if (suffixes.hasLongBase && first !== 48 && first !== 56) return fail(`H after ${digits}: only 48H and 56H exist`);
  const isOldSmall = first < SHORT_FROM && (letter === null || (letter === 'U' && isOf1952(first)));
  if (suffixes.isShort && isOldSmall)
    return fail(
      `${digits}${letter ?? ''}S is not a NEMA frame: S, the short shaft, came with the T frames and from 324U on`,
    );
  // The 140 series came with the T frames; a pump shaft name leaves the T out (143JM).
  if (seriesOf(first) === 140 && letter !== 'T' && !isPump)
    return fail(`${digits}${letter ?? ''} is not a NEMA frame: write ${digits}T${letters.replace(/^U/, '')}`);

  const generation = isSmall ? 'small' : (letter ?? (isPump ? 'T' : isOf1952(first) ? 'U' : 'original'));
  const numbers = second === null || second === first ? [first] : [first, second];
  const frame = `${numbers.length === 2 ? `${digits}/${String(second).slice(2)}` : digits}${canonical(letters, first, isPump)}`;
  return { ok: true, value: { system: 'NEMA', frame, numbers, generation, ...suffixes } };
}

/** 182, 184, 213 and 215 carry no letter in the 1952 series; U begins at 254U. */
const isOf1952 = (number: number): boolean => [182, 184, 213, 215].includes(number);

/** Short shafts before the T frames begin at 324S (from memory). */
const SHORT_FROM = 324;

/** 182U is 182, 145TJM is 145JM. */
const canonical = (letters: string, number: number, isPump: boolean): string =>
  isPump && !/^T?PH?/.test(letters)
    ? letters.replace(/^T/, '')
    : isOf1952(number)
      ? letters.replace(/^U/, '')
      : letters;

/** "182/4T", "213/15T" and "182/184T" are two lengths on one base. */
function secondOf(first: string, second: string | undefined): number | null {
  if (second === undefined) return null;
  return Number(second.length < first.length ? first.slice(0, first.length - second.length) + second : second);
}

interface Letters extends Omit<NemaFrameName, 'system' | 'frame' | 'numbers' | 'generation'> {
  generation: 'T' | 'U' | null;
}

// Longest first: CH is a face of its own, not C and H.
const FACES = [
  'HPH',
  'LPH',
  'CH',
  'JM',
  'JP',
  'VP',
  'PH',
  'HP',
  'LP',
  'C',
  'D',
  'P',
] as const satisfies NemaFaceLetters[];

/** Reads the letters from left to right; `left` is the first one that has no meaning where it stands. */
function lettersOf(letters: string, isSmall: boolean): { value: Letters; left: string } {
  const value: Letters = {
    generation: null,
    isShort: false,
    hasLongBase: false,
    face: null,
    farFace: null,
    isJetPump: false,
    isTaper: false,
    isVertical: false,
    hasSpecialMounting: false,
    hasSpecialShaft: false,
  };
  let left = letters;
  const take = (token: string): boolean => {
    if (!left.startsWith(token)) return false;
    left = left.slice(token.length);
    return true;
  };
  if (take('T')) value.generation = 'T';
  else if (take('U')) value.generation = 'U';
  value.isShort = take('S');
  let before: string;
  do {
    before = left;
    const far = value.farFace === null && (['FC', 'FD', 'F'] as const).find(take);
    if (far) value.farFace = far;
    const face = value.face === null && FACES.find(take);
    if (face) value.face = face;
    else if (take('J')) value.isJetPump = true;
    else if (take('H')) value.hasLongBase = true;
    else if (take('R')) value.isTaper = true;
    else if (take('V')) value.isVertical = true;
    else if (take('Y')) value.hasSpecialMounting = true;
    // E is an elevator shaft end: no figures for it here, so it is told as special.
    else if (take('Z') || take('E')) value.hasSpecialShaft = true;
    // Carbonator, gasoline and sump pump hubs and oil-burner flanges of small frames (that only small frames have them is
    // from memory): mountings of their own, without figures here.
    else if (isSmall && value.face === null && ['B', 'G', 'K', 'M', 'N'].some(take)) value.hasSpecialMounting = true;
    // Direct-current machine, wound-rotor crane motor: nothing of the drive end changes.
    else if (take('A') || take('X')) continue;
  } while (left !== before && left !== '');
  return { value, left };
}
