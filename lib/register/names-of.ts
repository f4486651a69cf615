import { db } from '@/lib/db/client';
import { isId } from './is-id';

/** What an entry of the audit is about, as a person calls it; null: it has no name here. */
export interface NamedThing {
  thing: string;
  id: string | null;
  name: string | null;
}

interface Row {
  thing: string;
  thingId: string | null;
  before: unknown;
  after: unknown;
}

/** What the records are called that entries of the audit are about or point to. */
export async function namesOf(siteId: string, rows: readonly Row[]) {
  const ids = new Set<string>();
  for (const { thingId, before, after } of rows) {
    if (thingId !== null && isId(thingId)) ids.add(thingId);
    for (const edit of [before, after])
      for (const [path, value] of Object.entries(edit ?? {}))
        if (path.endsWith('Id') && typeof value === 'string' && isId(value)) ids.add(value);
  }
  const where = { siteId, id: { in: [...ids] } };
  const [sets, motors, areas, stores, shelves, imports, tokens, links] = await Promise.all([
    db.pumpSet.findMany({ where, select: { id: true, tag: true } }),
    db.motor.findMany({ where, select: { id: true, plantNumber: true } }),
    db.area.findMany({ where, select: { id: true, name: true } }),
    db.store.findMany({ where, select: { id: true, name: true } }),
    db.shelf.findMany({ where, select: { id: true, name: true, store: { select: { name: true } } } }),
    db.importRun.findMany({ where, select: { id: true, fileName: true } }),
    db.apiToken.findMany({ where, select: { id: true, name: true } }),
    db.personLink.findMany({ where, select: { id: true, name: true } }),
  ]);
  const people = await db.user.findMany({
    where: {
      siteId,
      id: { in: rows.flatMap(peopleOf) },
    },
    select: { id: true, name: true },
  });
  const names = new Map([
    ...sets.map(({ id, tag }) => [id, tag] as const),
    ...motors.map(({ id, plantNumber }) => [id, plantNumber] as const),
    ...shelves.map(({ id, name, store }) => [id, `${store.name} / ${name}`] as const),
    ...imports.map(({ id, fileName }) => [id, fileName] as const),
    ...links.flatMap(({ id, name }) => (name === null ? [] : [[id, name] as const])),
    ...[...areas, ...stores, ...people, ...tokens].map(({ id, name }) => [id, name] as const),
  ]);
  return {
    named: (thing: string, id: string | null): NamedThing => ({
      thing,
      id,
      name: id === null ? null : (names.get(id) ?? null),
    }),
    nameOf: (path: string, id: string): string | null => (path.endsWith('Id') ? (names.get(id) ?? null) : null),
  };
}

/** Ids of people, which are of a form of their own. */
function peopleOf({ thing, thingId, after }: Row): string[] {
  const owner = (after as { ownerId?: unknown } | null)?.ownerId;
  return [thing === 'person' ? thingId : null, owner].filter((id): id is string => typeof id === 'string');
}
