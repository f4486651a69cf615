import { type Contents, contentsOf } from '@/lib/offline/contents';
import type { PackMotor, PackSet } from '@/lib/offline/pack';
import { type PlantInHand, takeIn } from '@/lib/offline/plant-in-hand';
import { withWaiting } from '@/lib/offline/with-waiting';
import type { About, Waiting } from '../asked';
import { type Store, store } from './store';

interface Held {
  about: About | null;
  /** The snapshot as the register gave it. */
  base: PlantInHand;
  /** As it is with what waits. */
  plant: PlantInHand;
  waiting: Waiting[];
  /** What is told of the snapshot until all of it is in hand. */
  brief: Contents | null;
}

/** What this tab has in hand. */
export const held: Held = {
  about: null,
  brief: null,
  base: empty(),
  plant: empty(),
  waiting: [],
};

function empty(): PlantInHand {
  return { sets: new Map(), motors: new Map() };
}

/** Where, among the parts, it stands what the snapshot is in brief. */
const BRIEF = 'brief';
/** Parts are read some at a time: between them the page is answered. */
const RANGES = ['m', 's'].flatMap((kind) => [...'0123456789abcdef'].map((digit) => kind + digit));

/** Reads from the phone’s database what its sets are, and what waits. */
export async function loadBrief(): Promise<void> {
  const db = await store();
  const tx = db.transaction(['about', 'parts', 'outbox']);
  const about = await tx.objectStore('about').get('now');
  const outbox = await tx.objectStore('outbox').getAll();
  const brief = await tx.objectStore('parts').get(BRIEF);
  await tx.done;
  const waiting = outbox.sort((a, b) => a.at - b.at);
  Object.assign(held, { about: about ?? null, waiting, brief: brief === undefined ? null : JSON.parse(brief) });
}

/** Nobody would be told else if all were in hand: nothing that waits changes it. */
export const isBriefEnough = (): boolean => held.brief !== null && mine().length === 0;

let told: { plant: PlantInHand; contents: Contents } | null = null;

/** What is in hand, in brief. */
export function contents(): Contents {
  if (held.brief !== null) return held.brief;
  if (told?.plant !== held.plant) told = { plant: held.plant, contents: contentsOf(held.plant) };
  return told.contents;
}

/** Reads it from the phone's database; the sets and motors only where another tab has kept newer ones. */
export async function load(): Promise<void> {
  const db = await store();
  const tx = db.transaction(['about', 'parts', 'outbox']);
  const about = await tx.objectStore('about').get('now');
  const outbox = await tx.objectStore('outbox').getAll();
  const isHeld = held.brief === null && about?.at === held.about?.at && about?.cursor === held.about?.cursor;
  const base = isHeld ? held.base : empty();
  for (const range of isHeld ? [] : RANGES)
    for (const text of await tx.objectStore('parts').getAll(IDBKeyRange.bound(range, `${range}\uffff`))) {
      const part = JSON.parse(text) as { sets?: PackSet[]; motors?: PackMotor[] };
      takeIn(base, { sets: part.sets ?? [], motors: part.motors ?? [] });
    }
  await tx.done;
  Object.assign(held, { about: about ?? null, base, waiting: outbox.sort((a, b) => a.at - b.at), brief: null });
  overlay();
}

let seen: { base: PlantInHand; keys: string } | null = null;

/** What waits, seen as done; what was refused is not. The plant in hand stays the same as long as nothing has changed. */
export function overlay() {
  const { base } = held;
  const all = mine();
  const keys = all.map(({ key }) => key).join();
  if (seen?.base === base && seen.keys === keys) return;
  seen = { base, keys };
  held.plant = withWaiting(
    base,
    all.map(({ message }) => message),
  );
}

const mine = () =>
  held.waiting.filter(({ message, state }) => state === 'waiting' && message.userId === held.about?.userId);

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
  Object.assign(held, { about, base, brief: null });
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
  if (names.size > 0 || changed.isWhole) void store.put(JSON.stringify(contentsOf({ sets, motors })), BRIEF);
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
  Object.assign(held, { about: null, base: empty(), brief: null, ...(outboxToo && { waiting: [] }) });
  overlay();
}
