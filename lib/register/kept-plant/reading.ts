import { db, type Tx } from '@/lib/db/client';
import { siteSettings } from '@/lib/plant/site-settings';
import { forgetMotors } from '../motor-row';
import { changedMotors, changedSets } from '../pack/changed-ids';
import { type CursorNow, cursorNow } from '../pack/cursor';
import type { KeptPlant } from './kept-plant';
import { type MotorRead, motorsRead } from './motors-read';
import { type SetRead, setsRead } from './sets-read';

/** What was read of a site, and up to where. */
export interface Reading {
  /** Which register: one that was restored from a backup counts its transactions anew. */
  register: string;
  /** The oldest transaction at work when it was read: what such a one wrote was not seen. */
  from: bigint;
  site: Pick<KeptPlant, 'siteId' | 'name' | 'timezone' | 'settings'>;
  sets: ReadonlyMap<string, SetRead>;
  motors: ReadonlyMap<string, MotorRead>;
}

/** Rows read and parsed at a time: between them others have their turn. */
const PART = 100;
/** More ids than a site has: what has changed is told whole. */
const ALL = 1_000_000;
/** How long a reading of what has changed may take: an import may have changed everything. */
const PATIENCE_MS = 120_000;

/**
 * The site as it stands now, by what was read before and what may have changed since; all of it at one moment. The first
 * reading goes page by page, each in a transaction of its own, so that none is held open for long.
 */
export async function readingNow(siteId: string, before: Reading | null): Promise<Reading> {
  const old = before ?? (await pageByPage(siteId));
  return db.$transaction(
    async (tx) => {
      const now = await cursorNow(tx, siteId);
      if (now.register !== old.register || now.from < old.from) forgetMotors();
      const isSame = now.register === old.register && old.from <= now.from;
      const from = isSame ? old.from : null;
      const setIds = await changedSets(tx, { siteId, from, before: now.before, after: null, take: ALL });
      const motorIds = await changedMotors(tx, { siteId, from, before: now.before, after: null, take: ALL });
      return {
        ...{ register: now.register, from: now.from, site: await siteRead(tx, siteId) },
        sets: await withRead(isSame ? old.sets : NONE, setIds, (ids, known) => setsRead(tx, siteId, ids, known)),
        motors: await withRead(isSame ? old.motors : NONE, motorIds, (ids, known) =>
          motorsRead(tx, siteId, ids, known),
        ),
      };
    },
    { isolationLevel: 'RepeatableRead', timeout: PATIENCE_MS },
  );
}

const NONE = new Map<string, never>();

/** Everything, of several moments: what changes meanwhile may be in it or not, and is read again by whoever goes on from it. */
async function pageByPage(siteId: string): Promise<Reading> {
  const sets = new Map<string, SetRead>();
  const motors = new Map<string, MotorRead>();
  let first: { now: CursorNow; site: Reading['site'] } | null = null;
  for (let [of, after]: ['set' | 'motor', string | null] = ['set', null]; ; ) {
    const { now, site, ids } = await db.$transaction(
      async (tx) => {
        const now = await cursorNow(tx, siteId);
        const site = first?.site ?? (await siteRead(tx, siteId));
        const asked = { siteId, from: null, before: now.before, after, take: PART };
        const ids = of === 'set' ? await changedSets(tx, asked) : await changedMotors(tx, asked);
        if (of === 'set') put(sets, await setsRead(tx, siteId, ids, sets));
        else put(motors, await motorsRead(tx, siteId, ids, motors));
        return { now, site, ids };
      },
      { isolationLevel: 'RepeatableRead' },
    );
    first ??= { now, site };
    after = ids.at(-1) ?? after;
    if (ids.length === PART) continue;
    if (of === 'motor') return { register: first.now.register, from: first.now.from, site: first.site, sets, motors };
    [of, after] = ['motor', null];
  }
}

async function siteRead(tx: Tx, siteId: string): Promise<Reading['site']> {
  const { name, timezone, settings } = await tx.site.findUniqueOrThrow({ where: { id: siteId } });
  return { siteId, name, timezone, settings: siteSettings.parse(settings) };
}

/** What was known with what is read anew of the ids; the very same map where nothing changed. */
async function withRead<T>(
  known: ReadonlyMap<string, T>,
  ids: readonly string[],
  read: (ids: readonly string[], known: ReadonlyMap<string, T>) => Promise<Map<string, T | null>>,
): Promise<ReadonlyMap<string, T>> {
  let all: Map<string, T> | null = null;
  for (let i = 0; i < ids.length; i += PART) {
    const part = await read(ids.slice(i, i + PART), known);
    for (const id of part.keys()) if (part.get(id) === null && !known.has(id)) part.delete(id);
    if (part.size > 0) all = put(all ?? new Map(known), part);
  }
  return all ?? known;
}

function put<T>(all: Map<string, T>, read: ReadonlyMap<string, T | null>): Map<string, T> {
  for (const [id, one] of read) {
    if (one === null) all.delete(id);
    else all.set(id, one);
  }
  return all;
}
