import type { Prisma } from '@/lib/db/generated/client';

/** A set as a line of a list. */
export interface SetLine {
  setId: string;
  tag: string;
  service: string | null;
  area: string | null;
  pump: string | null;
  criticality: number | null;
  /** Plant number of the motor in it; null: it stands empty. */
  motorNumber: string | null;
  frame: string | null;
  /** Since when a fault is open; null: none is. */
  failedAt: Date | null;
  changedAt: Date;
}

export const SET_LINE = {
  area: { select: { name: true } },
  pump: { select: { description: true } },
  motor: { select: { plantNumber: true, nameplate: { select: { frame: true } } } },
  faults: { where: { closedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { at: true } },
} as const satisfies Prisma.PumpSetInclude;

type Row = Prisma.PumpSetGetPayload<{ include: typeof SET_LINE }>;

export function setLineOf({ id, tag, service, criticality, changedAt, area, pump, motor, faults }: Row): SetLine {
  const plate = motor?.nameplate ?? null;
  return {
    setId: id,
    tag,
    service,
    criticality,
    changedAt,
    area: area?.name ?? null,
    pump: pump?.description ?? null,
    motorNumber: motor?.plantNumber ?? null,
    frame: plate?.frame ?? null,
    failedAt: faults[0] ? faults[0].at : null,
  };
}
