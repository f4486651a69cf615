import { randomUUID } from 'node:crypto';
import { beforeEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import type { MeasuredFigures } from '@/lib/energy/read-measured';
import { acceptFinding } from '@/lib/register/commands/accept-finding';
import { changeThings } from '@/lib/register/commands/change-things';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { type MeasurementTold, tellMeasurement } from '@/lib/register/commands/tell-measurement';
import { measurements } from '@/lib/register/queries/measurements';
import { review } from '@/lib/register/queries/review';
import { keptReview } from '@/lib/register/review/kept-review';
import { ALL_OPEN } from '@/lib/review/list/review-filter';
import { colleague, got, smallPlant, someone } from './plant';

const TODAY = '2026-11-28';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const NOTHING: MeasuredFigures = {
  ...{ voltsL1L2: null, voltsL2L3: null, voltsL3L1: null, ampsL1: null, ampsL2: null, ampsL3: null },
  ...{ inputKw: null, powerFactor: null, rpm: null, hertz: null },
};
const at = (minutesAgo: number) => new Date(Date.now() - minutesAgo * 60_000);

const told = (figures: Partial<MeasuredFigures>, differs: Partial<MeasurementTold> = {}): MeasurementTold => ({
  ...{ key: randomUUID(), setId: got(here.sets, 'P-101'), at: at(10), note: null },
  ...{ figures: { ...NOTHING, ...figures }, ...differs },
});
const tell = async (...of: Parameters<typeof told>) => {
  const done = await tellMeasurement(here.actor, told(...of));
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  return done.measurementId;
};
const list = () => measurements(here.actor, got(here.sets, 'P-101'));
const reviewed = async () => (await keptReview(here.actor.siteId)).sets.get(got(here.sets, 'P-101'));
const uneven = { voltsL1L2: 450, voltsL2L3: 467, voltsL3L1: 480 };

test('a measurement is kept with who, when, which motor, and is in the audit', async () => {
  await tell({ ampsL1: 6.1, inputKw: 3.9 }, { note: 'Warm syrup' });
  expect(await list()).toMatchObject([
    { by: here.actor.name, motor: 'M-1', note: 'Warm syrup', figures: { ...NOTHING, ampsL1: 6.1, inputKw: 3.9 } },
  ]);
  const where = { siteId: here.actor.siteId, action: 'set.measure' };
  expect((await db.auditEntry.findFirstOrThrow({ where })).after).toMatchObject({ ampsL1: 6.1, inputKw: 3.9 });
});

test('the same key is kept once', async () => {
  const once = told({ ampsL1: 6.1 });
  const first = await tellMeasurement(here.actor, once);
  expect(await tellMeasurement(here.actor, once)).toEqual({ ...first, isRepeat: true });
  expect(await list()).toHaveLength(1);
});

test('it is of the motor that was in the set then, not of the one that came after', async () => {
  await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null);
  await tell({ ampsL1: 6.1 }, { at: at(60 * 24) });
  await tell({ ampsL1: 6.4 }, { at: new Date() });
  expect((await list()).map(({ motor }) => motor)).toEqual(['M-7', 'M-1']);
});

test('the newest counts, of one moment the one told last; an older one told later does not', async () => {
  const moment = at(30);
  await tell({ ampsL1: 6 }, { at: moment });
  const second = await tell({ ampsL1: 6.2 }, { at: moment });
  expect((await reviewed())?.newest?.measurementId).toBe(second);
  const before = await reviewed();
  await tell({ ampsL1: 5 }, { at: at(600) });
  expect(await reviewed()).toBe(before);
});

test('uneven volts raise a finding, even ones take it away, and other sets are not judged anew', async () => {
  const other = async () => (await keptReview(here.actor.siteId)).sets.get(got(here.sets, 'P-102'));
  await changeThings(here.actor, [
    {
      ...{ thing: 'set', id: got(here.sets, 'P-101'), version: null },
      edit: { 'coupling.type': 'coupling', 'load.atPumpRpm': 1750, 'load.shaftKw': 3.5 },
    },
  ]);
  const rules = async () => (await reviewed())?.findings.map(({ rule }) => rule);
  expect(await rules()).toEqual([]);
  const before = await other();
  await tell(uneven);
  expect(await rules()).toEqual(['derated']);
  expect(await other()).toBe(before);
  await tell({ voltsL1L2: 460, voltsL2L3: 461, voltsL3L1: 459 }, { at: at(1) });
  expect(await rules()).toEqual([]);
});

test('an accepted finding stands open again when the volts it rests on are measured anew', async () => {
  await changeThings(here.actor, [
    {
      ...{ thing: 'set', id: got(here.sets, 'P-101'), version: null },
      edit: { 'coupling.type': 'coupling', 'load.atPumpRpm': 1750, 'load.shaftKw': 3.5 },
    },
  ]);
  await tell(uneven);
  const open = async () => (await review(here.actor, { filter: ALL_OPEN, today: TODAY }, { page: 1, perPage: 9 })).rows;
  const [row] = await open();
  if (!row) throw new Error('nothing is raised');
  const { rule, figures } = row.finding;
  const asked = { setId: row.setId, rule, figures, reason: 'Utility told', againOn: '2027-01-01' };
  expect(await acceptFinding(here.actor, asked, TODAY)).toMatchObject({ outcome: 'saved' });
  expect(await open()).toEqual([]);
  await tell({ voltsL1L2: 448, voltsL2L3: 467, voltsL3L1: 482 }, { at: at(1) });
  expect((await open()).map(({ finding }) => finding.rule)).toEqual(['derated']);
});

test.each<[string, Partial<MeasurementTold>, string]>([
  ['a moment to come', { at: new Date('2099-01-01') }, 'at'],
  ['a set that is none', { setId: randomUUID() }, 'setId'],
  ['a key that is none', { key: 'x' }, 'key'],
  ['a note that is too long', { note: 'x'.repeat(2_001) }, 'note'],
])('refused: %s', async (_, differs, path) => {
  expect(await tellMeasurement(here.actor, told({ rpm: 1_750 }, differs))).toMatchObject({
    outcome: 'refused',
    problems: [{ path }],
  });
});

test('a technician measures; what was kept is never changed; another site sees nothing of it', async () => {
  const technician = await colleague(here.actor.siteId, 'technician', 'Per Ost');
  expect(await tellMeasurement(technician, told({ rpm: 1_752 }))).toMatchObject({ outcome: 'saved' });
  const where = { siteId: here.actor.siteId };
  await expect(db.measurement.updateMany({ where, data: { rpm: 1 } })).rejects.toThrow(/permission denied/);
  await expect(db.measurement.deleteMany({ where })).rejects.toThrow(/permission denied/);
  const other = await someone();
  expect(await measurements(other, got(here.sets, 'P-101'))).toEqual([]);
  expect(await tellMeasurement(other, told({ rpm: 1_750 }))).toMatchObject({ outcome: 'refused' });
});
