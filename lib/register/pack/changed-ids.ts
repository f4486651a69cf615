import type { Tx } from '@/lib/db/client';
import { Prisma } from '@/lib/db/generated/client';

interface Asked {
  siteId: string;
  /** Only what was changed in this transaction or later, and before the other; null: everything. */
  from: bigint | null;
  before: bigint;
  after: string | null;
  take: number;
}

/** The sets whose entry in the pack may have changed: by a row of their own, or by one that shows in it. */
export async function changedSets(tx: Tx, asked: Asked): Promise<string[]> {
  const { siteId, after, take } = asked;
  const changed = changedIn(asked);
  const which =
    changed === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`(
          id IN (SELECT id FROM sets)
          OR area_id IN (SELECT id FROM area WHERE ${changed})
          OR pump_id IN (SELECT id FROM pump WHERE ${changed})
          OR supply_id IN (SELECT id FROM supply WHERE ${changed})
          OR id IN (SELECT set_id FROM fault WHERE ${changed})
          OR id IN (SELECT set_id FROM fault WHERE site_id = ${siteId}::uuid AND motor_id IN (SELECT id FROM motors))
          OR id IN (SELECT set_id FROM swaps)
          OR id IN (SELECT from_set_id FROM swaps WHERE from_set_id IS NOT NULL))`;
  // Its history names motors and other sets.
  const within = Prisma.sql`
    WITH sets AS (SELECT id FROM pump_set WHERE ${changed ?? Prisma.sql`FALSE`}),
      motors AS (SELECT id FROM motor WHERE ${changed ?? Prisma.sql`FALSE`}),
      swaps AS (
        SELECT set_id, from_set_id FROM swap WHERE ${changed ?? Prisma.sql`FALSE`}
        UNION ALL
        SELECT set_id, from_set_id FROM swap WHERE site_id = ${siteId}::uuid AND (
          motor_in_id IN (SELECT id FROM motors) OR motor_out_id IN (SELECT id FROM motors)
          OR set_id IN (SELECT id FROM sets) OR from_set_id IN (SELECT id FROM sets)))`;
  const rows = await tx.$queryRaw<{ id: string }[]>`
    ${within}
    SELECT id::text FROM pump_set
    WHERE site_id = ${siteId}::uuid AND (${after}::uuid IS NULL OR id > ${after}::uuid) AND ${which}
    ORDER BY pump_set.id LIMIT ${take}`;
  return rows.map(({ id }) => id);
}

/** The motors whose entry may have changed: also by the name of their shelf or its store. A plate raises its motor. */
export async function changedMotors(tx: Tx, asked: Asked): Promise<string[]> {
  const { siteId, after, take } = asked;
  const changed = changedIn(asked);
  const which =
    changed === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`(
          (${changed})
          OR shelf_id IN (SELECT id FROM shelf WHERE ${changed})
          OR shelf_id IN (
            SELECT id FROM shelf
            WHERE site_id = ${siteId}::uuid AND store_id IN (SELECT id FROM store WHERE ${changed})))`;
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT id::text FROM motor
    WHERE site_id = ${siteId}::uuid AND (${after}::uuid IS NULL OR id > ${after}::uuid) AND ${which}
    ORDER BY motor.id LIMIT ${take}`;
  return rows.map(({ id }) => id);
}

const changedIn = ({ siteId, from, before }: Asked) =>
  from === null
    ? null
    : Prisma.sql`site_id = ${siteId}::uuid AND changed_in >= ${from}::bigint AND changed_in < ${before}::bigint`;
