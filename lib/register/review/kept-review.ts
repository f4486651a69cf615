import { keeperOf } from '../kept-plant/keeper';
import type { KeptPlant } from '../kept-plant/kept-plant';
import { plantOfSite } from '../kept-plant/plant-now';
import { turns } from '../next-turn';
import { type MeasurementsKnown, newestMeasurements } from './newest-measurement';
import { type ReviewedSet, reviewedSet } from './reviewed-set';
import { type ShelfNow, shelfNow } from './shelf-now';
import { sparesBySet } from './spares-by-set';

/** The review of a whole site. Whatever did not change since it was asked before is the very same object. */
export interface KeptReview {
  plant: KeptPlant;
  measurements: MeasurementsKnown;
  /** The settings it was judged by, as text: another text, and all is judged anew. */
  settings: string;
  sets: ReadonlyMap<string, ReviewedSet>;
  shelf: ShelfNow;
}

const asked = globalThis as { bedplateReviews?: (siteId: string) => Promise<KeptReview> };

/** One keeper a process, however often this module is loaded. */
asked.bedplateReviews ??= keeperOf<KeptReview>(async (siteId, before) =>
  reviewOfPlant(await plantOfSite(siteId), await newestMeasurements(siteId, before?.measurements ?? null), before),
);

/** A site's review as it stands now; only the sets that changed are judged anew. Whoever asks has asked `may`. */
export const keptReview = asked.bedplateReviews;

async function reviewOfPlant(
  plant: KeptPlant,
  measurements: MeasurementsKnown,
  before: KeptReview | null,
): Promise<KeptReview> {
  if (before?.plant === plant && before.measurements === measurements) return before;
  const settings = JSON.stringify(plant.settings);
  const old = before?.settings === settings ? before : null;
  const sets = new Map<string, ReviewedSet>();
  const turn = turns();
  const sparesOf = await sparesBySet(plant);
  for (const [id, kept] of plant.sets) {
    const known = old?.sets.get(id);
    const newest = measurements.bySet.get(id) ?? null;
    const spares = sparesOf(id);
    if (known?.kept === kept && known.newest === newest && known.spares === spares) {
      sets.set(id, known);
      continue;
    }
    await turn();
    sets.set(id, reviewedSet(kept, plant.settings, newest, spares));
  }
  return { plant, measurements, settings, sets, shelf: shelfNow(plant, plant.settings, old?.shelf ?? null) };
}
