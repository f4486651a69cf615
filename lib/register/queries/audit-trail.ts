import { type Actor, may, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import type { Edit } from '@/lib/fields/state';
import { isId } from '../is-id';
import { type NamedThing, namesOf } from '../names-of';
import { THINGS_OF_PEOPLE } from '../things-of-people';
import { isChangeOfRecord } from '../undoable';

/** Which entries of the audit are asked for; null: whatever. */
export interface TrailFilter {
  byId: string | null;
  /** Any of these was done. */
  actions: readonly string[] | null;
  /** set, motor, area, store, shelf, import, person ... */
  thing: string | null;
  /** A tag or a plant number, sign for sign but for its capitals. */
  name: string | null;
  changeId: string | null;
  /** Moments: not before the first, before the second. */
  from: Date | null;
  to: Date | null;
}

export const WHOLE_TRAIL: TrailFilter = {
  ...{ byId: null, actions: null, thing: null, name: null, changeId: null, from: null, to: null },
};

export interface TrailEntry {
  entryId: string;
  at: Date;
  by: { userId: string; name: string } | null;
  action: string;
  thing: NamedThing;
  before: Edit;
  after: Edit;
  note: string | null;
  /** Can be undone whole under it. */
  changeId: string | null;
}

export interface Trail {
  entries: TrailEntry[];
  /** Behind it the next part begins; null: there is none. */
  next: string | null;
  /** What ids in `before` and `after` are called. */
  nameOf: (path: string, id: string) => string | null;
}

const MOST = 500;

/** Who changed what from what to what, the latest first, a part at a time. People’s own matters are for administrators. */
export async function auditTrail(
  actor: Actor,
  filter: TrailFilter,
  { after, take: asked }: { after: string | null; take: number },
): Promise<Trail> {
  must(actor, 'audit.read');
  const { siteId } = actor;
  const take = Math.min(asked, MOST);
  const rows = await db.auditEntry.findMany({
    where: { AND: [await whereOf(actor, filter), behind(after)] },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: take + 1,
  });
  const shown = rows.slice(0, take);
  const last = shown.at(-1);
  const people = await db.user.findMany({
    where: { siteId, id: { in: [...new Set(shown.flatMap(({ byId }) => byId ?? []))] } },
    select: { id: true, name: true },
  });
  const names = new Map(people.map(({ id, name }) => [id, name]));
  const { named, nameOf } = await namesOf(siteId, shown);
  return {
    next: rows.length > take && last !== undefined ? `${last.at.toISOString()}_${last.id}` : null,
    nameOf,
    entries: shown.map((row) => ({
      entryId: row.id,
      at: row.at,
      by: row.byId === null ? null : { userId: row.byId, name: names.get(row.byId) ?? 'somebody' },
      action: row.action,
      thing: named(row.thing, row.thingId),
      before: (row.before ?? {}) as Edit,
      after: (row.after ?? {}) as Edit,
      note: row.note,
      changeId: isChangeOfRecord(row) ? row.changeId : null,
    })),
  };
}

async function whereOf(actor: Actor, { byId, actions, thing, name, changeId, from, to }: TrailFilter) {
  const { siteId } = actor;
  const hidden = may(actor, 'people.manage') ? [] : [...THINGS_OF_PEOPLE];
  const ids = name === null ? null : await idsNamed(siteId, name);
  const where: Prisma.AuditEntryWhereInput = {
    siteId,
    thing: { notIn: hidden, ...(thing !== null && { equals: thing }) },
    ...(byId !== null && { byId }),
    ...(actions !== null && { action: { in: [...actions] } }),
    ...(ids !== null && { thingId: { in: ids } }),
    ...(changeId !== null && { changeId: isId(changeId) ? changeId : NONE }),
    at: { ...(from !== null && { gte: from }), ...(to !== null && { lt: to }) },
  };
  return where;
}

const NONE = '00000000-0000-0000-0000-000000000000';

/** The sets and motors called so; those that are retired too. */
async function idsNamed(siteId: string, name: string): Promise<string[]> {
  const [sets, motors] = await Promise.all([
    db.pumpSet.findMany({ where: { siteId, tag: { equals: name, mode: 'insensitive' } }, select: { id: true } }),
    db.motor.findMany({ where: { siteId, plantNumber: { equals: name, mode: 'insensitive' } }, select: { id: true } }),
  ]);
  return [...sets, ...motors].map(({ id }) => id);
}

/** A place in the trail is a moment and an entry; anything else is its beginning. */
function behind(place: string | null): Prisma.AuditEntryWhereInput {
  const [moment = '', id = ''] = (place ?? '').split('_');
  const at = new Date(moment);
  if (Number.isNaN(at.getTime()) || !isId(id)) return {};
  return { OR: [{ at: { lt: at } }, { at, id: { lt: id } }] };
}
