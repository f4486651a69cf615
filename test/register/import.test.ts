import { beforeEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { undoImport } from '@/lib/register/commands/steer-import';
import { appliedFile, checkedFile, outcomes, readFile, runOf, work } from './import';
import { smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const SETS = `Tag,Area,Service,Mounting,Volts (V),Phases,Motor number,Frame,HP,RPM,Motor volts
P-101,Brewhouse,Syrup,foot,,,M-1,184T,5,1750,460
P-300,Brewhouse,Whey,foot,460,3,M-300,182T,3,1755,460
P-301,Filling,Brine,foot,460,3,,182T,3,1755,460
P-302,Filling,Brine,hanging,460,3,M-302,182T,3,1755,460
`;

test('a file is read, looked at row by row, and changes nothing until it is applied', async () => {
  const runId = await readFile(here.actor, 'sets', SETS);
  expect(await runOf(here.actor, runId)).toMatchObject({ status: 'ready', counts: { rows: 5 } });
  const checked = await checkedFile(here.actor, 'sets', SETS);
  expect(await setByTag(here.actor, 'P-300')).toBeNull();
  const applied = await appliedFile(here.actor, 'sets', SETS);
  expect((await setByTag(here.actor, 'P-300'))?.row.area?.name).toBe('Brewhouse');
  expect((await motorByNumber(here.actor, 'M-P-301'))?.motor.frame).toBe('182T');
  const again = await checkedFile(here.actor, 'sets', SETS);
  await undoImport(here.actor, applied);
  await work(here.actor, applied);
  expect(await setByTag(here.actor, 'P-300')).toBeNull();
  const back = await appliedFile(here.actor, 'sets', SETS);
  expect((await setByTag(here.actor, 'P-300'))?.row.area?.name).toBe('Brewhouse');
  expect(await db.pumpSet.count({ where: { siteId: here.actor.siteId, tag: 'P-300' } })).toBe(1);
});
