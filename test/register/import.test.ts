import { beforeEach, expect, test } from 'vitest';
import { NotAllowed } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { changeThings } from '@/lib/register/commands/change-things';
import { confirmImport } from '@/lib/register/commands/confirm-import';
import { startImport } from '@/lib/register/commands/start-import';
import { applyImport, cancelImport, readAnew, resumeImport, undoImport } from '@/lib/register/commands/steer-import';
import type { RunColumns } from '@/lib/register/import/run';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { appliedFile, checkedFile, countsOf, outcomes, readFile, runOf, work } from './import';
import { colleague, got, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const SETS = `Tag,Area,Service,Mounting,Supply volts,Supply phases,Motor number,Frame,HP,RPM,Motor volts
P-101,Brewhouse,Syrup,foot,,,M-1,184T,5,1740,460
P-300,Brewhouse,Whey,foot,460,3,M-300,182T,3,1755,460
P-301,Filling,Brine,foot,460,3,,182T,3,1755,460
P-302,Filling,Brine,hanging,460,3,M-302,182T,3,1755,460
`;

const set = (tag: string) => setByTag(here.actor, tag).then((known) => known?.row ?? null);
const motor = (number: string) => motorByNumber(here.actor, number);

test('the dry run says of every row what it would do, and changes nothing', async () => {
  const runId = await checkedFile(here.actor, 'sets', SETS);
  expect(await outcomes(here.actor, runId)).toEqual([
    [1, null, 'The row stands above the data: passed over.'],
    [2, 'changed', ''],
    [3, 'new', ''],
    [4, 'new', 'tells no motor number: one has to be given to its motor'],
    [5, 'refused', 'must be one of foot, face, foot-and-face'],
  ]);
  expect(await countsOf(here.actor, runId)).toMatchObject({
    rows: 5,
    done: 5,
    new: 2,
    changed: 1,
    refused: 1,
    passed: 1,
  });
  const row = await db.importRow.findFirstOrThrow({ where: { runId, line: 2 } });
  expect(row.changes).toEqual(
    expect.arrayContaining([
      expect.objectContaining({ thing: 'set', path: 'service', from: null, to: 'Syrup' }),
      expect.objectContaining({ thing: 'motor', path: 'ratings.0.rpm', from: '1750 rpm', to: '1740 rpm' }),
    ]),
  );
  expect(await set('P-300')).toBeNull();
  expect((await motor('M-1'))?.motor.ratings[0]?.rpm).toBe(1750);
});

test('R2 applied, the register says what the file says; the same file again says “same” of every row and changes nothing', async () => {
  const runId = await appliedFile(here.actor, 'sets', SETS);
  expect(await runOf(here.actor, runId)).toMatchObject({ status: 'applied', counts: { applied: 3, refused: 1 } });
  const made = await set('P-300');
  expect(made).toMatchObject({ service: 'Whey', area: { name: 'Brewhouse' }, supply: { volts: 460, phases: 3 } });
  expect(made?.motor?.plantNumber).toBe('M-300');
  expect((await set('P-301'))?.motor?.plantNumber).toBe('M-P-301');
  expect((await motor('M-1'))?.motor.ratings).toMatchObject([{ rpm: 1740, hp: 5 }, { rpm: 1450 }]);
  const before = await db.auditEntry.count({
    where: { siteId: here.actor.siteId, thing: { in: ['set', 'motor', 'area'] } },
  });
  const again = await appliedFile(here.actor, 'sets', SETS);
  expect(await countsOf(here.actor, again)).toMatchObject({ new: 0, changed: 0, same: 3, applied: 0 });
  const after = await db.auditEntry.count({
    where: { siteId: here.actor.siteId, thing: { in: ['set', 'motor', 'area'] } },
  });
  expect(after).toBe(before);
});

test('an import is undone whole, and imported again brings back what it had made', async () => {
  const runId = await appliedFile(here.actor, 'sets', SETS);
  const id = (await set('P-300'))?.id;
  expect(await undoImport(here.actor, runId)).toBe('done');
  await work(here.actor, runId);
  expect((await runOf(here.actor, runId)).status).toBe('undone');
  expect((await set('P-300'))?.retiredAt).not.toBeNull();
  expect((await set('P-101'))?.service).toBeNull();
  expect((await motor('M-1'))?.motor.ratings[0]?.rpm).toBe(1750);
  expect(await db.area.count({ where: { siteId: here.actor.siteId, retiredAt: null } })).toBe(0);
  await appliedFile(here.actor, 'sets', SETS);
  expect(await set('P-300')).toMatchObject({ id, retiredAt: null, area: { name: 'Brewhouse', retiredAt: null } });
  expect((await set('P-300'))?.motor?.plantNumber).toBe('M-300');
  const again = await checkedFile(here.actor, 'sets', SETS);
  expect(await countsOf(here.actor, again)).toMatchObject({ same: 3, new: 0, changed: 0 });
});

test('an import is not undone over what somebody changed since, and says what', async () => {
  const runId = await appliedFile(here.actor, 'sets', SETS);
  await changeThings(here.actor, [
    { thing: 'set', id: String((await set('P-300'))?.id), version: null, edit: { service: 'Oil' } },
  ]);
  await undoImport(here.actor, runId);
  await work(here.actor, runId);
  const run = await runOf(here.actor, runId);
  expect(run.status).toBe('applied');
  expect(run.says).toMatch(/one record was changed since \(set, service: Whey was imported, Oil stands now\)/);
  expect((await set('P-301'))?.retiredAt).toBeNull();
});

test('a row that somebody overtook after the dry run is refused, the others are written', async () => {
  const runId = await checkedFile(here.actor, 'sets', SETS);
  await changeThings(here.actor, [
    { thing: 'set', id: got(here.sets, 'P-101'), version: null, edit: { service: 'Oil' } },
  ]);
  await applyImport(here.actor, runId);
  await work(here.actor, runId);
  const [, changed, made] = await outcomes(here.actor, runId);
  expect(changed).toEqual([2, 'refused', expect.stringContaining('was changed in the register after the dry run')]);
  expect(made?.[1]).toBe('applied');
  expect((await set('P-101'))?.service).toBe('Oil');
  expect(await countsOf(here.actor, runId)).toMatchObject({ applied: 2, refused: 2 });
});

test('spares come onto shelves that the import makes, or are refused where it may make none', async () => {
  const spares = `Motor number;Store;Shelf;Frame;kW;Volts;Hz;U/min
M-7;Main;B2;184T;;;;
M-500;Main;C1;132S;5,5;400;50;1455
M-501;Annex;1;132S;5,5;400;50;1455
`;
  const refused = await checkedFile(here.actor, 'motors', spares, { makePlaces: false });
  expect((await outcomes(here.actor, refused)).map(([, outcome]) => outcome)).toEqual([
    null,
    'refused',
    'refused',
    'refused',
  ]);
  await appliedFile(here.actor, 'motors', spares);
  const shelves = await db.motor.findMany({
    where: { siteId: here.actor.siteId, plantNumber: { in: ['M-7', 'M-500', 'M-501'] } },
    select: { plantNumber: true, shelf: { select: { name: true, store: { select: { name: true } } } } },
    orderBy: { plantNumber: 'asc' },
  });
  expect(shelves.map(({ plantNumber, shelf }) => `${plantNumber} ${shelf?.store.name} ${shelf?.name}`)).toEqual([
    'M-500 Main C1',
    'M-501 Annex 1',
    'M-7 Main B2',
  ]);
  expect((await motor('M-500'))?.motor).toMatchObject({
    frame: '132S',
    ratings: [{ kw: 5.5, volts: 400, hertz: 50, rpm: 1455 }],
  });
});

test('columns are confirmed by a person and remembered for the site, and only there', async () => {
  const text = 'Wortlaut,Dingsda,Mounting,Motor maker\nP-400,Syrup,foot,\nP-401,Brine,foot,\n';
  const runId = await readFile(here.actor, 'sets', text);
  const told = (index: number, field: string | null) => ({ index, field, unit: null });
  const both = { options: {}, makePlaces: true };
  expect(
    await confirmImport(here.actor, runId, { ...both, columns: [told(0, 'service'), told(1, 'service')] }),
  ).toMatchObject({
    outcome: 'refused',
    says: ['“Wortlaut” and “Dingsda” both are Service: choose one.'],
  });
  expect(
    await confirmImport(here.actor, runId, { ...both, columns: [told(0, null), told(1, 'service')] }),
  ).toMatchObject({
    outcome: 'refused',
  });
  const columns = [told(0, 'tag'), told(1, 'service'), told(2, 'mounting'), told(3, null)];
  expect(await confirmImport(here.actor, runId, { ...both, columns })).toEqual({ outcome: 'saved' });
  expect(await confirmImport(here.actor, runId, { ...both, columns })).toEqual({ outcome: 'late' });
  await work(here.actor, runId);
  expect(await countsOf(here.actor, runId)).toMatchObject({ new: 2 });
  const found = async (actor = here.actor) => {
    const next = await readFile(actor, 'sets', text);
    return ((await runOf(actor, next)).columns as unknown as RunColumns).columns.map(
      ({ field, because }) => `${field} ${because}`,
    );
  };
  expect(await found()).toEqual(['tag remembered', 'service remembered', 'mounting remembered', 'null remembered']);
  expect((await found(await someone()))[1]).not.toBe('service remembered');
});

test('S15 what is no sheet is refused before anything is kept; what breaks later fails in words', async () => {
  const start = (bytes: Uint8Array) => startImport(here.actor, { fileName: 'x.csv', bytes, kind: 'sets' });
  expect(await start(new Uint8Array())).toMatchObject({ outcome: 'refused', says: 'The file is empty.' });
  expect(await start(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]))).toMatchObject({ outcome: 'refused' });
  expect(await db.importFile.count({ where: { siteId: here.actor.siteId } })).toBe(0);
  const runs = await db.importRun.findMany({ where: { siteId: here.actor.siteId } });
  expect(runs.map(({ status }) => status)).toEqual(['failed', 'failed']);
  const runId = await readFile(here.actor, 'sets', `Tag,Service\nP-1,"${'x'.repeat(40_000)}"\n`);
  expect(await runOf(here.actor, runId)).toMatchObject({
    status: 'failed',
    says: expect.stringContaining('40000 characters'),
  });
});

test('the file is read again as a person says it is written', async () => {
  const text = 'Tag;Service;Supply volts\nP-1;Sirup 1,5;400\nP-2;Lauge, heiß;400\n';
  const runId = await readFile(here.actor, 'sets', text);
  expect(await readAnew(here.actor, runId, { delimiter: ',' })).toBe('done');
  await work(here.actor, runId);
  const columns = async () => ((await runOf(here.actor, runId)).columns as unknown as RunColumns).columns.length;
  expect(await columns()).toBeLessThan(3);
  await readAnew(here.actor, runId, { delimiter: ';', encoding: 'windows-1252' });
  await work(here.actor, runId);
  expect(await columns()).toBe(3);
  const row = await db.importRow.findFirstOrThrow({ where: { runId, line: 3 } });
  expect(JSON.stringify(row.cells)).toContain('heiÃŸ'); // as said, not as it is
});

test('cancelled while it is written, it stops after the batch in hand; it can go on or be undone', async () => {
  // Eight batches: on a busy machine some go by before it is cancelled.
  const all = 800;
  const many = `Tag,Mounting,Service\n${Array.from({ length: all }, (_, i) => `Q-${i},foot,Rinse ${i}`).join('\n')}\n`;
  const runId = await checkedFile(here.actor, 'sets', many);
  await applyImport(here.actor, runId);
  const working = work(here.actor, runId);
  await expect
    .poll(() => countsOf(here.actor, runId).then(({ applied }) => applied), { interval: 10 })
    .toBeGreaterThan(0);
  expect(await cancelImport(here.actor, runId)).toBe('done');
  await working;
  const { applied } = await countsOf(here.actor, runId);
  expect(applied % 100).toBe(0);
  expect(applied).toBeLessThan(all);
  const count = () =>
    db.pumpSet.count({ where: { siteId: here.actor.siteId, tag: { startsWith: 'Q-' }, retiredAt: null } });
  expect(await count()).toBe(applied);
  await resumeImport(here.actor, runId);
  await work(here.actor, runId);
  expect([await count(), (await countsOf(here.actor, runId)).applied]).toEqual([all, all]);
  await undoImport(here.actor, runId);
  await work(here.actor, runId);
  expect(await count()).toBe(0);
});

test('S26 another site’s import is not there, and a technician imports nothing', async () => {
  const runId = await checkedFile(here.actor, 'sets', SETS);
  const stranger = await someone();
  const both = { columns: [], options: {}, makePlaces: true };
  expect(await applyImport(stranger, runId)).toBe('unknown');
  expect(await cancelImport(stranger, runId)).toBe('unknown');
  expect(await confirmImport(stranger, runId, both)).toEqual({ outcome: 'unknown' });
  await work(stranger, runId); // as if it had been queued
  expect((await runOf(here.actor, runId)).status).toBe('checked');
  const technician = await colleague(here.actor.siteId, 'technician', 'Bo Rask');
  await expect(applyImport(technician, runId)).rejects.toThrow(NotAllowed);
  const bytes = new TextEncoder().encode(SETS);
  await expect(startImport(technician, { fileName: 'a', bytes, kind: 'sets' })).rejects.toThrow(NotAllowed);
});

test('who may not import any more when the queue comes to it does not', async () => {
  const runId = await checkedFile(here.actor, 'sets', SETS);
  await applyImport(here.actor, runId);
  await db.user.update({ where: { id: here.actor.userId }, data: { role: 'technician' } });
  await work(here.actor, runId);
  expect(await runOf(here.actor, runId)).toMatchObject({
    status: 'failed',
    says: expect.stringContaining('may not import'),
  });
  expect(await set('P-300')).toBeNull();
});

test('S32 each step of an import is in the audit, with who asked for it', async () => {
  const runId = await appliedFile(here.actor, 'sets', SETS);
  const entries = await db.auditEntry.findMany({ where: { thing: 'import', thingId: runId }, orderBy: { at: 'asc' } });
  expect(entries.map(({ action, byId }) => [action, byId])).toEqual(
    ['import.start', 'import.check', 'import.apply'].map((action) => [action, here.actor.userId]),
  );
});
