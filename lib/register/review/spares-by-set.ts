import type { PumpSet } from '@/lib/plant/set';
import { hardToReplace } from '@/lib/review/hard-to-replace';
import { coverOfSet, coverOfSite } from '../kept-plant/cover-now';
import type { KeptPlant } from '../kept-plant/kept-plant';

/**
 * How many kinds of shelf motor could go into a set, by its id; null: nobody asks, since a standard motor is the like of
 * its own. The cover is worked out only where a set asks.
 */
export async function sparesBySet({ siteId, sets }: KeptPlant): Promise<(setId: string) => number | null> {
  const asking = new Set([...sets.values()].flatMap(({ setId, set }) => (asks(set) ? [setId] : [])));
  if (asking.size === 0) return () => null;
  const { cover } = await coverOfSite(siteId);
  return (setId) => (asking.has(setId) ? (cover.sets.get(setId)?.serves.length ?? null) : null);
}

/** The same of one set. */
export async function sparesOfSet(siteId: string, setId: string, set: PumpSet): Promise<number | null> {
  if (!asks(set)) return null;
  return (await coverOfSet(siteId, setId, set))?.serves.length ?? null;
}

const asks = ({ failed }: PumpSet): boolean => failed !== null && hardToReplace(failed) !== null;
