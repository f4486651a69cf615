import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';

/** Somebody was first: they took this motor, or put another into this set. */
export interface Taken {
  outcome: 'taken';
  what: 'motor' | 'set';
  /** Null when it was not a person, or long before the audit began. */
  by: string | null;
  at: Date | null;
  /** The set the motor now stands in, or the set that was filled; null: the motor stands in none. */
  setTag: string | null;
  /** The motor in question, or the one that now stands in the set; null: none does. */
  motorNumber: string | null;
}

/**
 * Who took the motor, or changed what stands in the set, and when. Every move is in the audit. `motorOutId` is the
 * motor somebody expected in the set: it may have been moved away without a swap.
 */
export async function whoWasFirst(
  tx: Tx,
  { siteId }: Actor,
  what: 'motor' | 'set',
  id: string,
  motorOutId: string | null = null,
): Promise<Taken> {
  const motor = await tx.motor.findFirst({
    where: what === 'motor' ? { siteId, id } : { siteId, setId: id },
    select: { plantNumber: true, set: { select: { tag: true } } },
  });
  const set = what === 'set' ? await tx.pumpSet.findFirst({ where: { siteId, id }, select: { tag: true } }) : null;
  const moved = { thing: 'motor', thingId: what === 'motor' ? id : motorOutId, action: 'motor.move' };
  const swapped = { thing: 'set', thingId: id, action: 'swap.record' };
  const change = await tx.auditEntry.findFirst({
    where: {
      siteId,
      OR: what === 'motor' || motorOutId === null ? [what === 'motor' ? moved : swapped] : [moved, swapped],
    },
    orderBy: { at: 'desc' },
    select: { at: true, byId: true },
  });
  const person = change?.byId ? await tx.user.findUnique({ where: { id: change.byId }, select: { name: true } }) : null;
  return {
    outcome: 'taken',
    what,
    by: person?.name ?? null,
    at: change?.at ?? null,
    setTag: (what === 'set' ? set?.tag : motor?.set?.tag) ?? null,
    motorNumber: motor?.plantNumber ?? null,
  };
}
