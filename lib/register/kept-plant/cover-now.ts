import { setImmediate as others } from 'node:timers/promises';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Cover, coverOf, type SetCover } from '@/lib/spares/cover/cover';
import { keeperOf } from './keeper';
import type { KeptPlant } from './kept-plant';
import { plantOfSite } from './plant-now';

interface CoveredPlant {
  plant: KeptPlant;
  /** By the ids of its sets; the motors are those on a shelf. */
  cover: Cover;
}

const asked = globalThis as { bedplateCovers?: (siteId: string) => Promise<CoveredPlant> };

/** So many sets are judged at a time: between them others have their turn. */
const PART = 200;

/** One keeper a process, however often this module is loaded. */
asked.bedplateCovers ??= keeperOf<CoveredPlant>(async (siteId, before) => {
  const plant = await plantOfSite(siteId);
  if (plant === before?.plant) return before;
  const shelf = shelfOf(plant);
  let cover = before?.cover ?? null;
  if (cover === null) {
    const sets = [...plant.sets];
    for (let some = PART; some < sets.length; some += PART) {
      cover = coverOf(new Map(sets.slice(0, some)), shelf, plant.settings, cover);
      await others();
    }
  }
  return { plant, cover: coverOf(plant.sets, shelf, plant.settings, cover) };
});

/** Which kinds of shelf motor could stand in for one set, judged for itself: nobody at a pump waits for the rest of the site. */
export async function coverOfSet(siteId: string, setId: string, set: PumpSet): Promise<SetCover | undefined> {
  const plant = await plantOfSite(siteId);
  return coverOf(new Map([[setId, { set }]]), shelfOf(plant), plant.settings).sets.get(setId);
}

const shelfOf = ({ motors }: KeptPlant): Motor[] =>
  [...motors.values()].flatMap(({ place, motor }) => (place === 'on-shelf' ? [motor] : []));

/** Which shelf motors could stand in for which sets of a site, as it stands now; kept beside the kept plant. Whoever asks has asked `may`. */
export const coverOfSite = asked.bedplateCovers;
