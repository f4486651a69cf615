import { beforeAll, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { exportRegister } from '@/lib/register/commands/export-register';
import { ALL_MOTORS } from '@/lib/register/motor-filter';
import { ALL_SETS } from '@/lib/register/set-filter';
import { writeCsv } from '@/lib/sheet/write-csv';
import { writeXlsx } from '@/lib/sheet/write-xlsx';
import { demoAccounts } from '../../seed/accounts';
import { loadPlant } from '../../seed/load-plant';
import { harrowmere } from '../../seed/plant/harrowmere';
import { appliedFile, checkedFile, countsOf, outcomes } from '../register/import';
import { someone } from '../register/plant';

const TODAY = '2026-11-25';
let actor: Actor;

beforeAll(async () => {
  process.env.BEDPLATE_DEMO_PASSWORD = 'heron-quarry-lantern';
  const { siteId } = await someone();
  const people = await demoAccounts(siteId);
  await loadPlant(harrowmere(TODAY), people, TODAY);
  actor = people.planner;
});

async function bytesOf(rows: readonly (string | number | null)[][], format: 'csv' | 'xlsx'): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of format === 'csv' ? writeCsv(rows) : writeXlsx('Sets', rows)) parts.push(part);
  return Buffer.concat(parts);
}

test.each([
  ['sets', 'csv'],
  ['sets', 'xlsx'],
  ['motors', 'csv'],
  ['motors', 'xlsx'],
] as const)('export of the whole demo’s %s as %s, imported again, says “same” of every row', async (kind, format) => {
  const rows = await exportRegister(actor, kind === 'sets' ? { kind, filter: ALL_SETS } : { kind, filter: ALL_MOTORS });
  const where = { siteId: actor.siteId, retiredAt: null };
  expect(rows.length - 1).toBe(kind === 'sets' ? await db.pumpSet.count({ where }) : await db.motor.count({ where }));
  const runId = await checkedFile(actor, kind, await bytesOf(rows, format));
  const others = (await outcomes(actor, runId)).slice(1).filter(([, outcome]) => outcome !== 'same');
  expect(others).toEqual([]);
  expect(await countsOf(actor, runId)).toMatchObject({ same: rows.length - 1, refused: 0, new: 0, changed: 0 });
});

test('two exports build the same register at an empty site', async () => {
  const both = async (of: Actor) => ({
    sets: await exportRegister(of, { kind: 'sets', filter: ALL_SETS }),
    motors: await exportRegister(of, { kind: 'motors', filter: ALL_MOTORS }),
  });
  const here = await both(actor);
  const other = await someone();
  const sets = await appliedFile(other, 'sets', await bytesOf(here.sets, 'csv'));
  expect(await countsOf(other, sets)).toMatchObject({ applied: here.sets.length - 1, refused: 0 });
  const motors = await appliedFile(other, 'motors', await bytesOf(here.motors, 'xlsx'));
  expect((await outcomes(other, motors)).filter(([, outcome]) => outcome === 'refused')).toEqual([]);
  expect(await both(other)).toEqual(here);
});

test('S32 an export is in the audit', async () => {
  await exportRegister(actor, { kind: 'motors', filter: { ...ALL_MOTORS, q: 'nothing is called so' } });
  const last = await db.auditEntry.findFirst({
    where: { siteId: actor.siteId, action: 'register.export' },
    orderBy: { at: 'desc' },
  });
  expect(last).toMatchObject({ byId: actor.userId, after: { kind: 'motors', rows: 0 } });
});
