import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import { stateOf } from '@/lib/fields/state';
import type { Draft } from '@/lib/import/draft';
import type { ImportKind } from '@/lib/import/field';
import type { RowPlan } from '@/lib/import/plan';
import type { CellProblem } from '@/lib/import/row-draft';
import { plain } from '@/lib/import/same-value';
import { ALL_THINGS } from '../things/all-things';

/** The places of a site in use, by their names as `plain` has them. */
export interface PlaceNames {
  areas: Map<string, string>;
  stores: Map<string, string>;
  /** By store and shelf. */
  shelves: Map<string, string>;
}

const MOST = 20_000;

export async function placeNames(tx: Tx, siteId: string): Promise<PlaceNames> {
  const where = { siteId, retiredAt: null };
  // One after the other: a transaction has one connection.
  const areas = await tx.area.findMany({ where, select: { id: true, name: true }, take: MOST });
  const stores = await tx.store.findMany({ where, select: { id: true, name: true }, take: MOST });
  const shelves = await tx.shelf.findMany({
    where,
    select: { id: true, name: true, store: { select: { name: true } } },
    take: MOST,
  });
  return {
    areas: new Map(areas.map(({ id, name }) => [plain(name), id])),
    stores: new Map(stores.map(({ id, name }) => [plain(name), id])),
    shelves: new Map(shelves.map(({ id, name, store }) => [shelfKey(store.name, name), id])),
  };
}

const shelfKey = (store: string, shelf: string) => `${plain(store)}\n${plain(shelf)}`;

/** What a row asks of places: the area of a set, the shelf of a motor; null: nothing. */
export interface Places {
  area: string | null;
  shelf: { store: string; name: string } | null;
}

/** The area and the shelf that a row would make hold, by what it changes and by what stands. */
export function placesOf(kind: ImportKind, draft: Draft, changed: ReadonlySet<string>, kept: KeptPlace): Places {
  const area = kind === 'sets' && changed.has('area') ? (draft.set?.area ?? null) : null;
  const isShelved = kind === 'motors' && (changed.has('store') || changed.has('shelf') || changed.has('place'));
  const place = draft.motor?.place ?? kept?.place;
  if (!isShelved || place !== 'on-shelf') return { area, shelf: null };
  const store = draft.motor?.store ?? kept?.store ?? null;
  const name = draft.motor?.shelf ?? kept?.shelf ?? null;
  return { area, shelf: store === null || name === null ? null : { store, name } };
}

type KeptPlace = { place: string; store: string | null; shelf: string | null } | null;

/** Names of places that are not there, where none is to be made; and names that none can have. */
export function placeProblems(
  kind: ImportKind,
  draft: Draft,
  { changes }: RowPlan,
  names: PlaceNames,
  mayMake: boolean,
  kept: KeptPlace,
): CellProblem[] {
  const { area, shelf } = placesOf(kind, draft, new Set(changes.map(({ field }) => field)), kept);
  const says = 'is not in the register: make it first, or say that the import makes what is missing';
  const isMissingShelf = shelf !== null && !names.shelves.has(shelfKey(shelf.store, shelf.name));
  return [
    ...(area !== null && !names.areas.has(plain(area)) && !mayMake ? [{ field: 'area', value: area, says }] : []),
    ...(isMissingShelf && !mayMake ? [{ field: 'shelf', value: `${shelf.store} / ${shelf.name}`, says }] : []),
    ...[
      ['area', area],
      ['store', shelf?.store ?? null],
      ['shelf', shelf?.name ?? null],
    ].flatMap(([field, name]) =>
      name != null && name.length > LONGEST ? [{ field: String(field), value: name, says: TOO_LONG }] : [],
    ),
  ];
}

const LONGEST = 80;
const TOO_LONG = `is longer than ${LONGEST} characters`;

export type By = Actor & { changeId: string };

/** The id of an area; made where there is none. */
export async function areaNamed(tx: Tx, by: By, names: PlaceNames, name: string): Promise<string> {
  return names.areas.get(plain(name)) ?? keep(names.areas, plain(name), await made(tx, by, 'area', { name }));
}

/** The id of a shelf; it and its store made where there is none. */
export async function shelfNamed(tx: Tx, by: By, names: PlaceNames, store: string, name: string): Promise<string> {
  const there = names.shelves.get(shelfKey(store, name));
  if (there !== undefined) return there;
  const storeId =
    names.stores.get(plain(store)) ?? keep(names.stores, plain(store), await made(tx, by, 'store', { name: store }));
  return keep(names.shelves, shelfKey(store, name), await made(tx, by, 'shelf', { name, storeId }));
}

function keep(map: Map<string, string>, key: string, id: string): string {
  map.set(key, id);
  return id;
}

/** A place that was retired and is named again is brought back. */
async function made(tx: Tx, by: By, thing: 'area' | 'store' | 'shelf', told: { name: string; storeId?: string }) {
  const { siteId } = by;
  const state = stateOf(told);
  const { name, storeId = '' } = told;
  const before =
    thing === 'area'
      ? await tx.area.findFirst({ where: { siteId, name }, select: { id: true, retiredAt: true } })
      : thing === 'store'
        ? await tx.store.findFirst({ where: { siteId, name }, select: { id: true, retiredAt: true } })
        : await tx.shelf.findFirst({ where: { siteId, name, storeId }, select: { id: true, retiredAt: true } });
  if (before?.retiredAt) {
    const standing = (await ALL_THINGS[thing].locked(tx, siteId, [before.id])).get(before.id);
    const { retiredAt, ...rest } = standing?.state ?? state;
    await ALL_THINGS[thing].write(tx, siteId, before.id, rest);
    const entry = { before: { retiredAt: before.retiredAt.toISOString() }, after: { retiredAt: null } };
    await record(tx, by, { action: `${thing}.change`, thing, thingId: before.id, ...entry });
    return before.id;
  }
  const id = randomUUID();
  if (thing === 'area') await tx.area.create({ data: { siteId, id, name } });
  else if (thing === 'store') await tx.store.create({ data: { siteId, id, name } });
  else await tx.shelf.create({ data: { siteId, id, name, storeId } });
  await record(tx, by, { action: `${thing}.register`, thing, thingId: id, after: state });
  return id;
}
