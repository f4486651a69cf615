import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { MeasuredFigures } from '@/lib/energy/read-measured';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

export interface MeasurementTold {
  /** Of the page it was typed in: the same key is carried out once. */
  key: string;
  setId: string;
  /** When it was read. */
  at: Date;
  figures: MeasuredFigures;
  note: string | null;
}

export type MeasurementOutcome = { outcome: 'saved'; measurementId: string; isRepeat: boolean } | Refused;

/** A clock at the set may be ahead of ours by so much. */
const AHEAD_MS = 5 * 60_000;

/**
 * Keeps what was read at a running set, with the motor that was in it at that moment. Measurements are only ever added to:
 * what was told wrong is told again, and of one moment what was told last counts.
 */
export async function tellMeasurement(actor: Actor, told: MeasurementTold): Promise<MeasurementOutcome> {
  must(actor, 'set.measure');
  const { siteId, userId } = actor;
  const { key, setId, at, figures, note } = told;
  if (!isId(key)) return refused('key', 'is none: open the page anew');
  if (!isId(setId)) return refused('setId', 'is not in the register of this site');
  if (at.getTime() > Date.now() + AHEAD_MS) return refused('at', 'has not come yet');
  if (note !== null && (note.trim() === '' || note.length > 2_000))
    return refused('note', 'must have 1 to 2,000 characters');
  return db.$transaction(async (tx): Promise<MeasurementOutcome> => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${siteId} measured ${key}`}, 0))`;
    const before = await tx.measurement.findUnique({ where: { siteId_key: { siteId, key } } });
    if (before !== null) return { outcome: 'saved', measurementId: before.id, isRepeat: true };
    const set = await tx.pumpSet.findFirst({
      where: { siteId, id: setId, retiredAt: null },
      select: { motor: { select: { id: true } } },
    });
    if (set === null) return refused('setId', 'is not in the register of this site');
    const motorId = await motorThen(tx, siteId, setId, at, set.motor?.id ?? null);
    const { id } = await tx.measurement.create({
      data: { siteId, key, setId, motorId, byId: userId, at, ...figures, note },
      select: { id: true },
    });
    const read = Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== null));
    await record(tx, actor, {
      action: 'set.measure',
      thing: 'set',
      thingId: setId,
      after: { measurementId: id, ...read },
    });
    return { outcome: 'saved', measurementId: id, isRepeat: false };
  });
}

/** The motor that was in the set at a moment: the one that the first swap after it took out, else the one that is there now. */
async function motorThen(tx: Tx, siteId: string, setId: string, at: Date, now: string | null): Promise<string | null> {
  const swap = await tx.swap.findFirst({
    where: { siteId, setId, at: { gt: at } },
    orderBy: { at: 'asc' },
    select: { motorOutId: true },
  });
  return swap === null ? now : swap.motorOutId;
}
