import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { enclosureMinimum } from '@/lib/standards/enclosure-minimum';
import { type IpCover, ipCovers } from '@/lib/standards/ip-covers';
import { block, type Finding, ok, toJudge, toRead } from '../../finding';

/**
 * Does the enclosure keep out what the place holds, numeral by numeral? An enclosure word promises only its least degree.
 * Where the set states none, the failed motor's code is evidence: less than it is a check. Not asked where neither tells.
 */
export function enclosure(set: PumpSet, candidate: Motor): Finding | null {
  const stated = set.surroundings.ip;
  const had = stated === null && set.failed !== null ? degreeOf(set.failed) : null;
  const need = stated ?? had;
  const air = airFrom(set, candidate);
  if (need === null && air === null) return null;

  const have = degreeOf(candidate);
  const compared = { criterion: 'enclosure', have: candidate.ip ?? candidate.enclosure, need, cite: CITE } as const;
  if (air !== null && need === null) return toJudge(compared, air);
  if (need === null) return null;
  if (have === null) return toRead(compared, `No IP code is known; ${whose(stated)} ${need}.`, READING, 2);

  const cover = ipCovers(have, need);
  if (cover.solids !== 'covers' || cover.water !== 'covers')
    return fallsShort(candidate, stated, need, cover, compared);
  if (air !== null) return toJudge(compared, air);
  return ok(
    compared,
    candidate.ip === null ? `${candidate.enclosure} promises at least ${have}.` : `${have} covers ${need}.`,
  );
}

const CITE = 'IEC 60529 clause 6; IEC 60034-5';
const READING = 'Read the IP code on the plate';
const whose = (stated: string | null) => (stated === null ? 'the failed motor had' : 'the place needs');

function fallsShort(
  candidate: Motor,
  stated: string | null,
  need: string,
  { solids, water }: IpCover,
  compared: Parameters<typeof block>[0],
): Finding {
  const against = solids === 'covers' ? 'water' : water === 'covers' ? 'solids' : 'solids and water';
  if (candidate.ip === null) {
    const says = `${candidate.enclosure} promises less against ${against} than ${need}, which ${whose(stated)}.`;
    return toRead(compared, says, READING, 2);
  }
  if (solids !== 'less' && water !== 'less') {
    const says = `${candidate.ip} does not state its degree against ${against}; ${whose(stated)} ${need}.`;
    return toRead(compared, says, 'Look for a second IP code on the plate or ask the maker', 10);
  }
  const says = `${candidate.ip} gives less against ${against} than ${need}, which ${whose(stated)}${jets(candidate.ip, water)}.`;
  return stated === null ? toJudge(compared, says) : block(compared, says);
}

/** Immersion and hose are different tests: the numeral is higher and the motor still fails. */
function jets(ip: string, water: IpCover['water']): string {
  const n = ip.charCodeAt(3) - 48;
  return water === 'less' && n >= 7 && n <= 9
    ? ` (${n} does not include lower water tests unless marked beside them)`
    : '';
}

/** The IP code, else the least degree the enclosure word promises, else null. Kept per motor. */
function degreeOf(motor: Motor): string | null {
  if (motor.ip !== null) return motor.ip;
  const word = wordOf(motor);
  return word === null ? null : word.atLeast;
}

type Word = ReturnType<typeof enclosureMinimum>;
const words = new WeakMap<Motor, { word: Word }>();
function wordOf(motor: Motor): Word {
  const kept = words.get(motor);
  if (kept !== undefined) return kept.word;
  const word = motor.enclosure === null ? null : enclosureMinimum(motor.enclosure);
  words.set(motor, { word });
  return word;
}

/** A motor that lives on another machine's air, or on a blower's, stands in only for its like. */
function airFrom(set: PumpSet, candidate: Motor): string | null {
  if (candidate.enclosure === null) return null;
  const word = wordOf(candidate);
  if (word === null || (word.airFrom !== 'machine' && word.airFrom !== 'blower')) return null;
  if (set.failed !== null && wordOf(set.failed)?.airFrom === word.airFrom) return null;
  if (word.airFrom === 'machine')
    return `${word.word} is cooled only by the air of the machine it stands in: here it has none.`;
  return `${word.word} needs a feed for its own blower: none is known here.`;
}
