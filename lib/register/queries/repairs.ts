import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { type RepairFigures, repairFigures } from '@/lib/plant/repair-figures';

/** A motor's way through repair. */
export interface KnownRepair {
  repairId: string;
  version: number;
  at: Date;
  by: string;
  reason: string;
  /** The set it came out of; null: it was sent from a shelf. */
  setTag: string | null;
  figures: RepairFigures;
  /** repair or scrap; null: not decided. */
  decision: string | null;
  decidedWhy: string | null;
  decider: string | null;
  endedAt: Date | null;
}

/** A motor that is at repair; `repair` null: nobody told why. */
export interface MotorAtRepair {
  plantNumber: string;
  frame: string | null;
  repair: KnownRepair | null;
}

const REPAIR = {
  by: { select: { name: true } },
  decider: { select: { name: true } },
  swap: { select: { set: { select: { tag: true } } } },
} as const satisfies Prisma.RepairInclude;

function repairOfRow(row: Prisma.RepairGetPayload<{ include: typeof REPAIR }>): KnownRepair {
  const { id, version, at, reason, decision, decidedWhy, endedAt, by, decider, swap } = row;
  return {
    ...{ repairId: id, version, at, by: by.name, reason, setTag: swap?.set.tag ?? null },
    figures: repairFigures.parse(row.figures),
    ...{ decision, decidedWhy, decider: decider?.name ?? null, endedAt },
  };
}

/** The last repair of a motor, ended or not; null: none is told. */
export async function lastRepair(actor: Actor, motorId: string): Promise<KnownRepair | null> {
  must(actor, 'register.read');
  const where = { siteId: actor.siteId, motorId };
  const row = await db.repair.findFirst({ where, include: REPAIR, orderBy: { at: 'desc' } });
  return row && repairOfRow(row);
}

/** As many as are listed; the rest is counted. */
const MOST = 500;

/** The motors at repair, those that wait longest first; of which nobody told since when, last. */
export async function repairs(actor: Actor): Promise<{ motors: MotorAtRepair[]; all: number }> {
  must(actor, 'register.read');
  const where = { siteId: actor.siteId, place: 'at-repair', retiredAt: null };
  const [rows, all] = await Promise.all([
    db.motor.findMany({
      where,
      select: {
        ...{ plantNumber: true, nameplate: { select: { frame: true } } },
        repairs: { where: { endedAt: null }, include: REPAIR, take: 1 },
      },
      orderBy: { plantNumber: 'asc' },
      take: MOST,
    }),
    db.motor.count({ where }),
  ]);
  const motors = rows.map(({ plantNumber, nameplate, repairs: [open] }) => ({
    ...{ plantNumber, frame: nameplate?.frame ?? null },
    repair: open === undefined ? null : repairOfRow(open),
  }));
  const since = ({ repair }: MotorAtRepair) => repair?.at.getTime() ?? Number.POSITIVE_INFINITY;
  return { motors: motors.sort((a, b) => (since(a) === since(b) ? 0 : since(a) - since(b))), all };
}
