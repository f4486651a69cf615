import { spareState } from '@/lib/matching/spare-state';
import { isAskedSet } from './cover-filter';
import type { HoldAsked, HoldFilter } from './hold-asked';
import type { KeptPlant, KeptSet } from './kept-plant/kept-plant';
import { today } from './today';

export interface SetsTakingPart {
  /** All that are asked for, those that stop the plant first. */
  sets: KeptSet[];
  /** Those of them that are ticked. */
  taking: KeptSet[];
  /** Tags asked for that no set in use has. */
  unknown: string[];
  /** The ticks told were of another list and do not count: all take part. */
  isOtherList: boolean;
  /** Sets in use at the site, whatever is asked for. */
  inUse: number;
  /** Motors on a shelf, and those of them whose winding reads too low to be offered. */
  shelf: { motors: number; refused: number };
}

/** Which sets of a plant a choice is asked for, and which of them take part in it; beside that what there is to choose from. */
export function setsTakingPart(
  plant: KeptPlant,
  { sets: filter, ticks }: Pick<HoldAsked, 'sets' | 'ticks'>,
): SetsTakingPart {
  const tags = new Set(filter.tags);
  const sets = [...plant.sets.values()]
    .filter((of) => (tags.size === 0 ? isAskedSet(of, filter) : tags.has(of.tag)))
    .sort((a, b) => (a.criticality ?? 5) - (b.criticality ?? 5) || (a.tag < b.tag ? -1 : 1));
  const known = new Set(sets.map(({ tag }) => tag));
  return {
    ...tickedOf(sets, filter, ticks),
    ...{ sets, unknown: [...tags].filter((tag) => !known.has(tag)) },
    ...{ inUse: plant.sets.size, shelf: shelfOf(plant) },
  };
}

function tickedOf(
  sets: KeptSet[],
  filter: HoldFilter,
  ticks: HoldAsked['ticks'],
): Pick<SetsTakingPart, 'taking' | 'isOtherList'> {
  if (ticks === 'all') return { taking: sets, isOtherList: false };
  if (ticks === 'none') return { taking: [], isOtherList: false };
  const [count, list] = ticks.shown.split('-');
  const wasAll = count === String(ticks.tags.length);
  const isOtherList = list !== listOf(filter);
  // Whoever ticked every box asked for all: a set that came since takes part too.
  if (isOtherList || wasAll) return { taking: sets, isOtherList: isOtherList && !wasAll };
  const ticked = new Set(ticks.tags);
  return { taking: sets.filter(({ tag }) => ticked.has(tag)), isOtherList: false };
}

function shelfOf({ motors, timezone }: KeptPlant): SetsTakingPart['shelf'] {
  const asOf = today(timezone);
  const shelf = [...motors.values()].filter(({ place }) => place === 'on-shelf');
  return {
    motors: shelf.length,
    refused: shelf.filter(({ motor }) => spareState(motor, asOf).refused !== null).length,
  };
}

/** Which list stood there with boxes, told along with the ticks: how many sets, and a sum of what they were asked by. */
export const shownAs = (filter: HoldFilter, sets: readonly KeptSet[]): string => `${sets.length}-${listOf(filter)}`;

/** FNV-1a in 32 bits, from memory: two filters with the same sum would only keep ticks that are seen on the page. */
function listOf({ q, areaId, criticality, tags }: HoldFilter): string {
  let sum = 0x81_1c_9d_c5;
  for (const sign of JSON.stringify([q, areaId, criticality, tags]))
    sum = Math.imul(sum ^ (sign.codePointAt(0) as number), 0x01_00_01_93) >>> 0;
  return sum.toString(36);
}
