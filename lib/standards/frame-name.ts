import type { Problem, Reading } from '@/lib/plant/reading';
import type { FrameSystem, FrameText, IecFrameName, NemaFrameName } from './frame-text';
import { iecFrameName } from './iec-frame-name';
import { type Mounting, mountingCode } from './mounting-code';
import { nemaFrameName } from './nema-frame-name';
import { LONGEST_TEXT, plainText } from './plain-text';
import { iecFlanges } from './tables/iec-flanges';
import { iecFootFrames } from './tables/iec-foot-frames';

export interface FrameHints {
  /** Decides where one text is a frame of both systems ("56", "225"). */
  system?: FrameSystem | null;
}

/**
 * Reads a frame as people type it. What could be two things is a problem that names both; nothing is guessed.
 * Letters before the number are the maker's and mean nothing dimensional (NEMA MG 1 4.2).
 */
export function frameName(text: string, { system = null }: FrameHints = {}): Reading<FrameText> {
  const fail = (says: string): Reading<FrameText> => ({
    ok: false,
    problems: [{ path: 'frame', value: text.trim().slice(0, LONGEST_TEXT) || null, says }],
  });
  if (text.length > LONGEST_TEXT) return fail(`is longer than any frame: at most ${LONGEST_TEXT} characters`);
  const plain = plainText(text);
  if (plain === '') return fail('is empty: write a frame such as 184TC or 112M');
  let rest = ` ${plain} `;
  let hint = system;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const match = pattern.exec(rest);
    if (match) rest = rest.replace(match[0], ' ');
    return match;
  };

  take(/\b(FRAME|FR|SIZE|BAUGR(OESSE|ÖSSE)?)\b\.?:? /);
  const named = take(/\b(NEMA|IEC)\b /)?.[1];
  if (named === 'NEMA' || named === 'IEC') {
    if (system !== null && system !== named) return fail(`says ${named} where ${system} was told`);
    hint = named;
  }
  const polesText = take(/[ -](\d{1,2}) ?-?POLES?\b| (2|4|6|8|10|12)P /);
  const mounting = take(
    / ((?:IM ?-?)?[BV] ?\d{1,2}(?: ?\/ ?(?:IM )?[BV]? ?\d{1,2})*|IM ?\d{4}(?: ?\/ ?(?:IM ?)?\w+)*) (?=$|[^/])/,
  );
  const flange = take(/ (F[FT]) ?-?(\d{2,4}) /);
  const shaft = take(/(?<=\d ?[SML]) (\d{2,3}) $/);
  const core = rest.trim();

  let held: Mounting | null = null;
  if (mounting?.[1]) {
    const read = mountingCode(mounting[1]);
    if (!read.ok) return { ok: false, problems: read.problems.map((one): Problem => ({ ...one, path: 'frame' })) };
    held = read.value;
  }
  const flangeName = flange ? `${flange[1]}${flange[2]}` : null;
  if (flangeName !== null && !flangeNames.has(flangeName))
    return fail(`names ${flangeName}, which is not a flange of IEC 60072-1`);
  const polesNumber = polesText?.[1] ?? polesText?.[2];

  if (core === '') {
    if (flangeName !== null && held === null)
      return { ok: true, value: { name: { system: null, frame: flangeName }, mounting: null, poles: null } };
    return fail('names no frame: write the frame number too, such as 112M');
  }
  const old = oldFlangeNames.get(core);
  if (old && held === null && flangeName === null)
    return fail(
      `is the old DIN name of flange ${old}${/\d+/.exec(core)?.[0] && isIecHeight(core) ? `, or frame ${core.slice(1)} with a maker's letter` : ''}: write ${old}, or the frame without the letter`,
    );

  // NEMA motors carry IM codes too, but a NEMA frame with a face says so in its letters.
  const isFlanged = flangeName !== null || (held?.isIec === true && held.hasFace === true);
  const read = coreName(core, hint ?? (isFlanged ? 'IEC' : null), hint !== null);
  if (!read.ok) return { ok: false, problems: read.problems.map((one) => ({ ...one, value: text.trim() })) };
  const { name, poles: suffixPoles } = read.value;
  if (name.system === 'NEMA' && flangeName !== null)
    return fail(`${flangeName} is an IEC flange, ${name.frame} a NEMA frame`);
  const shaftMm = shaft ? Number(shaft[1]) : null;
  if (shaftMm !== null && !(name.system === 'IEC' && shaftsOf(name.height).includes(shaftMm)))
    return fail(`${shaftMm} mm is not a standard shaft of ${name.frame}`);
  const poles = polesNumber === undefined ? suffixPoles : Number(polesNumber);
  if (poles !== null && (poles % 2 === 1 || poles === 0)) return fail(`${poles} poles: the number of poles is even`);
  return {
    ok: true,
    value: { name: name.system === 'IEC' ? { ...name, flange: flangeName, shaftMm } : name, mounting: held, poles },
  };
}

const shaftsOf = (height: number): number[] =>
  iecFootFrames.rows.filter((row) => row.height === height).flatMap(({ shafts }) => shafts.map(({ D }) => D[0]));
const flangeNames = new Set(iecFlanges.rows.map(({ flange }) => flange));
const oldFlangeNames = new Map(iecFlanges.rows.flatMap((row) => (row.oldName ? [[row.oldName, row.flange]] : [])));
const isIecHeight = (core: string): boolean => iecFrameName(core.slice(1)).ok;

type Core = { name: NemaFrameName | IecFrameName; poles: number | null };

/** `likely` is evidence for a system, `isTold` says a person named it. */
function coreName(core: string, likely: FrameSystem | null, isTold: boolean): Reading<Core> {
  const nema = nemaFrameName(core);
  const iec = iecFrameName(core);
  const asNema = (): Reading<Core> => (nema.ok ? { ok: true, value: { name: nema.value, poles: null } } : nema);
  if (likely === 'NEMA') return asNema();
  if (likely === 'IEC' && (iec.ok || isTold)) return iec;
  if (nema.ok && iec.ok) {
    const says = `is a NEMA frame (${nema.value.frame}) and an IEC frame (${iec.value.name.frame}): write "NEMA ${core}" or "IEC ${core}"`;
    return { ok: false, problems: [{ path: 'frame', value: core, says }] };
  }
  if (nema.ok) return asNema();
  if (iec.ok) return iec;
  // The reader that came further speaks: it names the part that is wrong.
  return nema.problems[0]?.value === null ? iec : nema;
}
