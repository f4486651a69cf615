import { PACK_VERSION, type Pack, type PackRefused } from '@/lib/offline/pack';
import type { About } from '../asked';
import { alone } from './alone';
import { held, keepPack, load, wipe } from './held';
import { isFull } from './store';
import { tellOthers } from './tell-others';

/** How it stands with the network and the person, as the page shows it. */
export const state = { isSignedOut: false, problem: null as string | null };

/** A snapshot that nobody could confirm for so long is no longer shown: sign-ins end after seven days at most. */
const KEPT_MS = 7 * 86_400_000;

/** Brings the snapshot up to date. Without a network nothing happens; what goes wrong is told in `state`. */
export async function bringUp(): Promise<void> {
  await alone('bedplate-pack', async () => {
    try {
      await load(); // another tab may have been here
      await fetchPack();
      state.problem = null;
      tellOthers();
    } catch (error) {
      state.problem = isFull(error)
        ? 'This phone has no room left: the snapshot could not be kept. What was there stays.'
        : error instanceof Away
          ? error.says
          : 'The snapshot could not be brought up to date.';
      if (!(error instanceof Away)) console.warn(error);
    }
  });
  if (held.about !== null && Date.now() - held.about.heardAt > KEPT_MS) await wipe({ outboxToo: false });
}

class Away extends Error {
  constructor(readonly says: string | null) {
    super('away');
  }
}

async function fetchPack() {
  const since = held.about?.cursor ?? null;
  const first = await packPart(since, null);
  const isSame = held.about === null || (held.about.userId === first.userId && held.about.siteId === first.siteId);
  // Another person: nothing of the one before is left.
  if (!isSame) {
    await wipe({ outboxToo: false });
    if (!first.isWhole) return fetchPack();
  }
  const sets = [...first.sets];
  const motors = [...first.motors];
  let last = first;
  while (last.next !== null) {
    last = await packPart(since, last.next);
    sets.push(...last.sets);
    motors.push(...last.motors);
  }
  const { siteId, userId, site, person, at, cursor, shelves, isWhole } = last;
  const about: About = {
    ...{ siteId, userId, site, person, at, cursor, shelves },
    clockAhead: Date.now() - Date.parse(at),
    heardAt: Date.now(),
  };
  await keepPack(about, { sets, motors, isWhole });
}

async function packPart(since: string | null, page: string | null): Promise<Pack> {
  const query = new URLSearchParams({ ...(since !== null && { since }), ...(page !== null && { page }) });
  const response = await fetch(`/pump/pack?${query}`, { cache: 'no-store', signal: AbortSignal.timeout(60_000) }).catch(
    () => {
      throw new Away(null);
    },
  );
  state.isSignedOut = response.status === 401;
  if (response.status === 401) {
    const told = (await response.json().catch(() => null)) as PackRefused | null;
    if (told?.wipe === true) await wipe({ outboxToo: false });
    throw new Away(null);
  }
  if (!response.ok) throw new Away('The register does not answer as it should. The snapshot stays as it was.');
  const pack = (await response.json()) as Pack;
  if (pack.version !== PACK_VERSION)
    throw new Away('The register speaks a newer language than this app: reload when there is a network.');
  return pack;
}
