import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { State } from '@/lib/fields/state';
import { ALL_MOTORS, type MotorFilter, whereMotors } from '../motor-filter';
import { ALL_SETS, whereSets } from '../set-filter';
import { motorsStanding } from '../things/motor-thing';
import { setsStanding } from '../things/set-thing';

export interface SetWhole {
  id: string;
  version: number;
  state: State;
  motorNumber: string | null;
}

export interface MotorWhole {
  id: string;
  version: number;
  state: State;
  setTag: string | null;
  store: string | null;
  shelf: string | null;
}

const MOST = 500;

/** The site's sets in use behind a tag, in the order of their tags. */
export async function setsAfter(
  actor: Actor,
  { q, after, take }: { q: string | null; after: string | null; take: number },
): Promise<SetWhole[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const rows = await db.pumpSet.findMany({
    where: { AND: [whereSets(siteId, { ...ALL_SETS, q }), after === null ? {} : { tag: { gt: after } }] },
    orderBy: { tag: 'asc' },
    take: Math.min(take, MOST),
    select: { id: true },
  });
  const whole = await setsWhole(
    db,
    siteId,
    rows.map(({ id }) => id),
  );
  return rows.flatMap(({ id }) => whole.get(id) ?? []);
}

/** The site's motors behind a plant number, in the order of their numbers. */
export async function motorsAfter(
  actor: Actor,
  { q, place, after, take }: Pick<MotorFilter, 'q' | 'place'> & { after: string | null; take: number },
): Promise<MotorWhole[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const rows = await db.motor.findMany({
    where: {
      AND: [whereMotors(siteId, { ...ALL_MOTORS, q, place }), after === null ? {} : { plantNumber: { gt: after } }],
    },
    orderBy: { plantNumber: 'asc' },
    take: Math.min(take, MOST),
    select: { id: true },
  });
  const whole = await motorsWhole(
    db,
    siteId,
    rows.map(({ id }) => id),
  );
  return rows.flatMap(({ id }) => whole.get(id) ?? []);
}

/** Sets with what is told beside their record. */
export async function setsWhole(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, SetWhole>> {
  const standing = await setsStanding(tx, siteId, ids);
  const held = await tx.motor.findMany({
    where: { siteId, setId: { in: [...ids] } },
    select: { setId: true, plantNumber: true },
  });
  const numbers = new Map(held.map(({ setId, plantNumber }) => [setId, plantNumber]));
  return new Map([...standing].map(([id, stands]) => [id, { id, ...stands, motorNumber: numbers.get(id) ?? null }]));
}

/** Motors with the names of the places they are in. */
export async function motorsWhole(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, MotorWhole>> {
  const standing = await motorsStanding(tx, siteId, ids);
  const rows = await tx.motor.findMany({
    where: { siteId, id: { in: [...ids] } },
    select: {
      id: true,
      set: { select: { tag: true } },
      shelf: { select: { name: true, store: { select: { name: true } } } },
    },
  });
  return new Map(
    rows.flatMap(({ id, set, shelf }) => {
      const stands = standing.get(id);
      if (stands === undefined) return [];
      const places = { setTag: set?.tag ?? null, store: shelf?.store.name ?? null, shelf: shelf?.name ?? null };
      return [[id, { id, ...stands, ...places }] as const];
    }),
  );
}

/** One of them; null: the site has none such. */
export async function setWhole(actor: Actor, id: string): Promise<SetWhole | null> {
  must(actor, 'register.read');
  return (await setsWhole(db, actor.siteId, [id])).get(id) ?? null;
}
export async function motorWhole(actor: Actor, id: string): Promise<MotorWhole | null> {
  must(actor, 'register.read');
  return (await motorsWhole(db, actor.siteId, [id])).get(id) ?? null;
}
