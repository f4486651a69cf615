import type { Reading } from '@/lib/plant/reading';
import type { IecFrameName } from './frame-text';
import { type IecFootFramesRow, iecFootFrames } from './tables/iec-foot-frames';

/**
 * Reads an IEC frame such as "112M", "132S/M", "D132S" or "100L-4". S, M and L are foot lengths, never a short shaft.
 * A height with one length in ordinary use has that length ("112" is 112M); "90" and "132" leave the length open.
 * A digit or a last letter A to E or X after the length is the maker's (common practice, no source).
 */
export function iecFrameName(core: string): Reading<{ name: IecFrameName; poles: number | null }> {
  const fail = (says: string, value: string | null = core): Reading<never> => ({
    ok: false,
    problems: [{ path: 'frame', value, says }],
  });
  const joined = core.replaceAll(' ', '');
  const match = /^(?:[A-Z]{1,4}\d?-|[A-Z]{0,4})(\d{2,3})(.*)$/.exec(joined);
  const height = Number(match?.[1]);
  const rows = byHeight.get(height);
  if (!match || !rows) return fail(`is not a frame known here: write a frame such as 184TC (NEMA) or 112M (IEC)`, null);

  const rest = /^((?:[SML]{1,3}|[SML](?:\/[SML]){1,2})?)([A-EX]?)(\d?)(?:-(\d{1,2}))?$/.exec(match[2] ?? '');
  if (!rest) return fail(`"${match[2]}" is not understood after IEC frame ${height}: S, M or L is the foot length`);
  const [, letters = '', maker = '', digit = '', polesText] = rest;
  const lengths = [...new Set(letters.replaceAll('/', ''))] as IecFrameName['lengths'];
  const names = rows.map(({ frame }) => frame);

  let poles = polesText === undefined ? null : Number(polesText);
  if (digit === '2' && poles === null)
    return fail(`could be 2 poles or the maker's second output: write ${height}${letters}-2 or ${height}${letters}`);
  if (digit !== '' && Number(digit) > 3) {
    if (poles !== null || Number(digit) % 2 === 1) return fail(`the figure ${digit} is not understood`);
    poles = Number(digit);
  }
  const missing = lengths.filter((length) => !rows.some((row) => row.length === length));
  if (missing.length > 0) return fail(`${height}${missing[0]} is not an IEC frame: there is ${names.join(', ')}`);
  // 56C, 56H and the like are NEMA frames.
  if (height === 56 && maker !== '' && !'AB'.includes(maker))
    return fail(`"${maker}" is not understood after IEC frame 56`);
  if (maker !== '' && lengths.length === 0 && rows.length > 1)
    return fail(`"${maker}" is not a foot length: there is ${names.join(', ')}`);

  const usual = rows.filter((row) => row.isUsual);
  const only = lengths.length === 0 && usual.length === 1 ? usual[0]?.length : null;
  const told = only ? [only] : lengths;
  const frame = `${height}${told.join('/')}`;
  return {
    ok: true,
    value: { name: { system: 'IEC', frame, height, lengths: told, flange: null, shaftMm: null }, poles },
  };
}

const byHeight = new Map<number, IecFootFramesRow[]>();
for (const row of iecFootFrames.rows) byHeight.set(row.height, [...(byHeight.get(row.height) ?? []), row]);
