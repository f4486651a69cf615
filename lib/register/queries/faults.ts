import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { FAULT_AT, type FaultAt, faultAtOf } from '../fault-line';

export interface FaultFilter {
  /** Null: every area. */
  areaId: string | null;
  /** Of the closed ones those that were closed in so many days up to now. */
  days: number;
}

export interface Faults {
  /** Longest standing first. */
  open: FaultAt[];
  /** Closed last first. */
  closed: FaultAt[];
  allOpen: number;
  allClosed: number;
}

/** The faults of the site's sets in use: all open ones, and those closed in the days asked. At most `most` of each. */
export async function faults(actor: Actor, { areaId, days }: FaultFilter, most = 500): Promise<Faults> {
  must(actor, 'register.read');
  const of: Prisma.FaultWhereInput = {
    siteId: actor.siteId,
    set: { retiredAt: null, ...(areaId !== null && { areaId }) },
  };
  const isOpen = { ...of, closedAt: null };
  const isClosed = { ...of, closedAt: { gte: new Date(Date.now() - days * 86_400_000) } };
  const [open, closed, allOpen, allClosed] = await Promise.all([
    db.fault.findMany({ where: isOpen, include: FAULT_AT, orderBy: [{ at: 'asc' }, { id: 'asc' }], take: most }),
    db.fault.findMany({
      where: isClosed,
      include: FAULT_AT,
      orderBy: [{ closedAt: 'desc' }, { id: 'asc' }],
      take: most,
    }),
    db.fault.count({ where: isOpen }),
    db.fault.count({ where: isClosed }),
  ]);
  return { open: open.map(faultAtOf), closed: closed.map(faultAtOf), allOpen, allClosed };
}
