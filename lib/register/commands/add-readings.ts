import { createHash } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { readingFindings } from '@/lib/job/reading-findings';
import type { Problem } from '@/lib/plant/reading';
import { predictedFor } from '../predicted-for';
import type { ReadingsRequest } from './readings-request';

export type ReadingsOutcome =
  | { outcome: 'saved'; readingsId: string; isRepeat: boolean }
  | { outcome: 'refused'; problems: Problem[] };

/** Keeps readings of a swap that was recorded before. They are only ever added to: the swap stands as it was. */
export async function addReadings(actor: Actor, request: ReadingsRequest): Promise<ReadingsOutcome> {
  must(actor, 'swap.record');
  const { siteId, userId } = actor;
  const { key, swapId, readings, takenAt } = request;
  return db.$transaction(async (tx) => {
    const before = await sentBefore(tx, actor, request);
    if (before) return before;
    const swap = await tx.swap.findUnique({
      where: { siteId_id: { siteId, id: swapId } },
      select: { setId: true, motorInId: true, motorOutId: true },
    });
    if (!swap) return refused('swapId', swapId, 'is not a swap of this site');
    const findings = readingFindings(readings, await predictedFor(tx, actor, swap));
    const { id } = await tx.swapReading.create({
      data: {
        siteId,
        swapId,
        byId: userId,
        takenAt,
        key,
        readings: { ...readings, ticked: [...readings.ticked], amps: [...readings.amps] },
        findings: findings.map((one) => ({ ...one })),
        bodySha256: sumOf(request),
      },
      select: { id: true },
    });
    await record(tx, actor, {
      action: 'swap.readings',
      thing: 'set',
      thingId: swap.setId,
      after: { swapId, readingsId: id },
    });
    return { outcome: 'saved', readingsId: id, isRepeat: false };
  });
}

/** What came of the same key before. Of two sendings of one request the second waits here for the first. */
async function sentBefore(tx: Tx, { siteId }: Actor, request: ReadingsRequest): Promise<ReadingsOutcome | null> {
  const { key } = request;
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${siteId} ${key}`}, 0))`;
  const before = await tx.swapReading.findUnique({
    where: { siteId_key: { siteId, key } },
    select: { id: true, bodySha256: true },
  });
  if (!before) return null;
  if (before.bodySha256 === sumOf(request)) return { outcome: 'saved', readingsId: before.id, isRepeat: true };
  return refused('key', key, 'was used before, for readings that said something else');
}

const sumOf = (request: ReadingsRequest) => createHash('sha256').update(JSON.stringify(request)).digest('hex');

const refused = (path: string, value: string, says: string): ReadingsOutcome => ({
  outcome: 'refused',
  problems: [{ path, value, says }],
});
