import { type Actor, must } from '@/lib/auth/may';
import { keeperOf } from './keeper';
import type { KeptPlant } from './kept-plant';
import { plantOf } from './plant-of';
import { type Reading, readingNow } from './reading';

interface Kept {
  plant: KeptPlant;
  of: Reading;
}

const asked = globalThis as { bedplatePlants?: (siteId: string) => Promise<Kept> };

/** One keeper a process, however often this module is loaded. */
asked.bedplatePlants ??= keeperOf<Kept>(async (siteId, before) => {
  const of = await readingNow(siteId, before?.of ?? null);
  return { plant: plantOf(of, before), of };
});
const kept = asked.bedplatePlants;

/** A site as it stands now, for whoever has asked `may` already, or asks for nobody. */
export const plantOfSite = async (siteId: string): Promise<KeptPlant> => (await kept(siteId)).plant;

/**
 * The actor's site with all its sets and motors, as it stands now. It is kept in this process and brought up to date by
 * what the database says has changed since: what anybody had committed when it was asked is in it.
 */
export async function plantNow(actor: Actor): Promise<KeptPlant> {
  must(actor, 'register.read');
  return plantOfSite(actor.siteId);
}
