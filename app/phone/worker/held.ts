import type { PackMotor, PackSet } from '@/lib/offline/pack';
import { type PlantInHand, takeIn } from '@/lib/offline/plant-in-hand';
import { withWaiting } from '@/lib/offline/with-waiting';
import type { About, Waiting } from '../asked';
import { type Store, store } from './store';

/** What this tab has in hand: the snapshot as the register gave it, and as it is with what waits. */
export const held: { about: About | null; base: PlantInHand; plant: PlantInHand; waiting: Waiting[] } = {
  about: null,
  base: empty(),
  plant: empty(),
  waiting: [],
};

function empty(): PlantInHand {
  return { sets: new Map(), motors: new Map() };
}

/** Reads it from the phone's database; the sets and motors only where another tab has kept newer ones. */
export async function load(): Promise<void> {
  const db = await store();
  const tx = db.transaction(['about', 'parts', 'outbox']);
  const about = await tx.objectStore('about').get('now');
  const outbox = await tx.objectStore('outbox').getAll();
  const isHeld = about?.at === held.about?.at && about?.cursor === held.about?.cursor;
  const parts = isHeld ? [] : await tx.objectStore('parts').getAll();
  await tx.done;
  const base = isHeld ? held.base : empty();
  for (const text of parts) {
    const part = JSON.parse(text) as { sets?: PackSet[]; motors?: PackMotor[] };
    takeIn(base, { sets: part.sets ?? [], motors: part.motors ?? [] });
  }
  Object.assign(held, { about: about ?? null, base, waiting: outbox.sort((a, b) => a.at - b.at) });
  overlay();
}

let seen: { base: PlantInHand; keys: string } | null = null;

/** What waits, seen as done; what was refused is not. The plant in hand stays the same as long as nothing has changed. */
export function overlay() {
  const { about, base, waiting } = held;
  const mine = waiting.filter(({ message, state }) => state === 'waiting' && message.userId === about?.userId);
  const keys = mine.map(({ key }) => key).join();
  if (seen?.base === base && seen.keys === keys) return;
  seen = { base, keys };
  held.plant = withWaiting(
    base,
    mine.map(({ message }) => message),
  );
}

/** Keeps what changed and takes it in hand; a whole pack takes the place of all that was there. */
export async function keepPack(
  about: About,
  changed: { sets: readonly PackSet[]; motors: readonly PackMotor[]; isWhole: boolean },
): Promise<void> {
  const isAsBefore = !changed.isWhole && changed.sets.length + changed.motors.length === 0;
  const base = isAsBefore
    ? held.base
    : changed.isWhole
      ? empty()
      : { sets: new Map(held.base.sets), motors: new Map(held.base.motors) };
  takeIn(base, changed);
  const db = await store();
  await writeParts(db, about, base, changed);
  Object.assign(held, { about, base });
  overlay();
}

const partOf = (id: string) => id.slice(0, 2);

async function writeParts(
  db: Store,
  about: About,
  { sets, motors }: PlantInHand,
  changed: { sets: readonly { id: string }[]; motors: readonly { id: string }[]; isWhole: boolean },
) {
  const touched = (kind: 's' | 'm', list: readonly { id: string }[]) =>
    new Set(list.map(({ id }) => kind + partOf(id)));
  const names = new Set([...touched('s', changed.sets), ...touched('m', changed.motors)]);
  const parts = new Map<string, { sets?: PackSet[]; motors?: PackMotor[] }>();
  for (const name of names) parts.set(name, name.startsWith('s') ? { sets: [] } : { motors: [] });
  for (const one of sets.values()) parts.get(`s${partOf(one.id)}`)?.sets?.push(one);
  for (const one of motors.values()) parts.get(`m${partOf(one.id)}`)?.motors?.push(one);
  const tx = db.transaction(['about', 'parts'], 'readwrite');
  const store = tx.objectStore('parts');
  if (changed.isWhole) void store.clear();
  for (const [name, part] of parts) void store.put(JSON.stringify(part), name);
  void tx.objectStore('about').put(about, 'now');
  await tx.done;
}

/** Forgets the snapshot and the drafts. What waits to be sent stays, under its person's name, unless that is to go too. */
export async function wipe({ outboxToo }: { outboxToo: boolean }): Promise<void> {
  const db = await store();
  const tx = db.transaction(['about', 'parts', 'outbox', 'drafts'], 'readwrite');
  void tx.objectStore('about').clear();
  void tx.objectStore('parts').clear();
  void tx.objectStore('drafts').clear();
  if (outboxToo) void tx.objectStore('outbox').clear();
  await tx.done;
  Object.assign(held, { about: null, base: empty(), ...(outboxToo && { waiting: [] }) });
  overlay();
}
