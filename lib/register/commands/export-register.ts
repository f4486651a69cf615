import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { exportSheet } from '@/lib/import/export-columns';
import type { Existing } from '@/lib/import/kept';
import { keptMotorsNamed, keptSetsNamed } from '../import/kept-for';
import { type MotorFilter, orderMotors, whereMotors } from '../motor-filter';
import { orderSets, type SetFilter, whereSets } from '../set-filter';
import { recordExport } from './export-step';

export type ExportAsked = { kind: 'sets'; filter: SetFilter } | { kind: 'motors'; filter: MotorFilter };

/** As many rows as an import takes back. */
const MOST = 50_000;
/** Records read at once. */
const STEP = 500;

/** The records of a list as rows that an import takes back; that they went out is in the audit. The first row names the columns. */
export async function exportRegister(actor: Actor, asked: ExportAsked): Promise<(string | number | null)[][]> {
  must(actor, 'register.export');
  const { siteId } = actor;
  const names = await namesOf(siteId, asked);
  const kept: Existing[] = [];
  for (let i = 0; i < names.length; i += STEP) {
    const some = names.slice(i, i + STEP);
    kept.push(...(await (asked.kind === 'sets' ? keptSetsNamed(db, siteId, some) : keptMotorsNamed(db, siteId, some))));
  }
  const { columns, rows } = exportSheet(asked.kind, kept);
  const after = { kind: asked.kind, rows: rows.length };
  await recordExport(actor, after);
  return [columns.map(({ heading }) => heading), ...rows];
}

async function namesOf(siteId: string, { kind, filter }: ExportAsked): Promise<string[]> {
  if (kind === 'sets') {
    const rows = await db.pumpSet.findMany({
      ...{ where: whereSets(siteId, filter), orderBy: orderSets(filter) },
      ...{ select: { tag: true }, take: MOST },
    });
    return rows.map(({ tag }) => tag);
  }
  const rows = await db.motor.findMany({
    ...{ where: whereMotors(siteId, filter), orderBy: orderMotors(filter) },
    ...{ select: { plantNumber: true }, take: MOST },
  });
  return rows.map(({ plantNumber }) => plantNumber);
}
