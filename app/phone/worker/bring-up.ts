import type { Pack, PackMotor, PackSet } from '@/lib/offline/pack';
import type { About } from '../asked';
import { alone } from './alone';
import { held, keepPack, load, wipe } from './held';
import { Away, packParts } from './pack-parts';
import { state } from './standing';
import { isFull } from './store';
import { tellOthers } from './tell-others';

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

async function fetchPack(): Promise<void> {
  const since = held.about?.cursor ?? null;
  const [sets, motors]: [PackSet[], PackMotor[]] = [[], []];
  let last: Pack | null = null;
  for await (const part of packParts(since)) {
    // Another person: nothing of the one before is left.
    if (last === null && held.about !== null && !isOf(held.about, part)) {
      await wipe({ outboxToo: false });
      if (!part.isWhole) return fetchPack();
    }
    sets.push(...part.sets);
    motors.push(...part.motors);
    last = part;
  }
  if (last === null) return;
  const { siteId, userId, site, person, at, cursor, shelves, isWhole } = last;
  const about: About = {
    ...{ siteId, userId, site, person, at, cursor, shelves },
    clockAhead: Date.now() - Date.parse(at),
    heardAt: Date.now(),
  };
  await keepPack(about, { sets, motors, isWhole });
}

const isOf = (about: About, { userId, siteId }: Pack) => about.userId === userId && about.siteId === siteId;
