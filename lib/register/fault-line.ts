import type { Prisma } from '@/lib/db/generated/client';
import { faultText } from '@/lib/plant/fault';

/** A fault as a line of the list of faults. Moments are the server's. */
export interface FaultAt {
  faultId: string;
  tag: string;
  service: string | null;
  area: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  /** The motor that stood in the set; null: it held none. */
  motor: string | null;
  says: string;
  at: Date;
  by: string;
  /** What the phone's clock told when it was seen: a note. */
  seenAt: Date | null;
  /** When the set ran again; null: the fault is open. */
  closedAt: Date | null;
  /** swap or repair; null: open, or closed before that was told. */
  closedBy: string | null;
  closedHow: string | null;
  closer: string | null;
  swapId: string | null;
}

export const FAULT_AT = {
  by: { select: { name: true } },
  closer: { select: { name: true } },
  motor: { select: { plantNumber: true } },
  set: { select: { id: true, tag: true, service: true, criticality: true, area: { select: { name: true } } } },
} as const satisfies Prisma.FaultInclude;

export function faultAtOf(row: Prisma.FaultGetPayload<{ include: typeof FAULT_AT }>): FaultAt {
  const { id, at, seenAt, closedAt, closedBy, closedHow, swapId, set, by, closer, motor } = row;
  return {
    faultId: id,
    tag: set.tag,
    service: set.service,
    area: set.area?.name ?? null,
    criticality: set.criticality,
    motor: motor?.plantNumber ?? null,
    says: faultText(row),
    at,
    by: by.name,
    seenAt,
    closedAt,
    closedBy,
    closedHow,
    closer: closer?.name ?? null,
    swapId,
  };
}
