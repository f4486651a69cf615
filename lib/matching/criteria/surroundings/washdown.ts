import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { waterNumeralOf } from '@/lib/standards/ip-covers';
import { block, type Finding, note, ok, toJudge, toRead } from '../../finding';

/**
 * Is the motor built to be hosed and cleaned down? Only a declared washdown duty answers; an IP code alone is a water
 * test on a new motor. Not asked of a dry place; where nobody has said, the failed motor's duty is evidence.
 */
export function washdown(set: PumpSet, candidate: Motor): Finding | null {
  const stated = set.surroundings.washdown;
  const had = stated === null && set.failed !== null ? set.failed.washdown : null;
  if (stated === false || (stated === null && (had === null || had === 'none'))) return null;

  const have = candidate.washdown;
  const compared = { criterion: 'washdown', have, need: had ?? 'washdown duty', cite: CITE } as const;
  if (have === null) return toRead(compared, `Washdown duty unknown; ${whose(had)}.`, READING, 5);
  if (have === 'none') return undeclared(candidate, had, compared);
  if (had === 'stainless' && have === 'painted')
    return toJudge(compared, 'The failed motor was stainless, this one is painted: is paint allowed over the product?');
  if (set.shaftDirection === 'down' || set.shaftDirection === 'up')
    return note(
      compared,
      `Declared washdown, ${have}. Shaft ${set.shaftDirection}: open the drain that is lowest in this position and plug the others.`,
    );
  return ok(compared, `Declared washdown, ${have}. Its drain holes must lie lowest as it stands.`);
}

const CITE = 'common practice, no source; water tests: IEC 60529';
const READING = 'Look for a washdown mark on the plate or in the maker’s sheet';
/** IPX5 is the first test with a jet (IEC 60529). */
const FIRST_JET_NUMERAL = 5;
const whose = (had: Motor['washdown']) =>
  had === null ? 'the place is washed down' : `the failed motor was ${had} washdown`;

function undeclared({ ip }: Motor, had: Motor['washdown'], compared: Parameters<typeof block>[0]): Finding {
  if (had !== null) return toJudge(compared, `No washdown duty; ${whose(had)}: find out how the place is cleaned.`);
  if (ip === null) return toJudge(compared, 'No washdown duty and no IP code: not shown to stand the hose.');
  const water = waterNumeralOf(ip);
  if (water !== null && water < FIRST_JET_NUMERAL)
    return block(compared, `No washdown duty, and ${ip} is no proof against jets.`);
  return toJudge(
    compared,
    `No washdown duty: ${ip} alone does not show that paint, seals and drains stand the cleaning.`,
  );
}
