import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ReadingFinding } from '@/lib/job/reading-finding';
import type { Readings } from '@/lib/job/readings';
import type { Result } from '@/lib/matching/assess';
import type { Finding } from '@/lib/matching/finding';
import { SWAP_LINE, type SwapLine, swapLineOf } from '../history-line';
import { readingFindingsOfRow, readingsOfRow } from '../readings-row';

export interface KnownSwap extends SwapLine {
  note: string | null;
  doneAt: Date | null;
  findings: Finding[];
  operatingPoint: Result['operatingPoint'] | null;
  workDone: { id: string; what: string; hours: number }[];
  checks: { criterion: string; says: string }[];
  insulationMohm: number | null;
  overloadA: number | null;
  /** As told with the swap; null: none were. */
  readings: Readings | null;
  readingFindings: ReadingFinding[];
  /** Told since, oldest first. */
  laterReadings: LaterReadings[];
}

export interface LaterReadings {
  id: string;
  at: Date;
  takenAt: Date | null;
  by: string;
  readings: Readings;
  findings: ReadingFinding[];
}

/** So many later readings of one swap are shown, the newest. */
const MOST = 200;

/** A swap with its judgement as it stood; null when the actor's site has none with this id. */
export async function swapById(actor: Actor, swapId: string): Promise<KnownSwap | null> {
  must(actor, 'register.read');
  if (!/^[0-9a-f-]{36}$/i.test(swapId)) return null;
  const row = await db.swap.findUnique({
    where: { siteId_id: { siteId: actor.siteId, id: swapId } },
    include: {
      ...SWAP_LINE,
      laterReadings: { orderBy: { at: 'desc' }, take: MOST, include: { by: { select: { name: true } } } },
    },
  });
  if (!row) return null;
  const { note, doneAt, insulationMohm, overloadA } = row;
  return {
    ...swapLineOf(row),
    note,
    doneAt,
    insulationMohm,
    overloadA,
    readings: readingsOfRow(row.readings),
    readingFindings: readingFindingsOfRow(row.readingFindings),
    laterReadings: row.laterReadings.reverse().map(({ id, at, takenAt, by, readings, findings }) => ({
      ...{ id, at, takenAt, by: by.name, findings: readingFindingsOfRow(findings) },
      readings: readings as unknown as Readings,
    })),
    // Written by record-swap from these very types, and never changed since: the database refuses it.
    findings: row.findings as unknown as Finding[],
    operatingPoint: row.operatingPoint as unknown as KnownSwap['operatingPoint'],
    workDone: row.workDone as unknown as KnownSwap['workDone'],
    checks: row.checks as unknown as KnownSwap['checks'],
  };
}
