import { createHash, randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { NO_READINGS, type Readings } from '@/lib/job/readings';
import { readingsSchema } from '@/lib/job/readings-schema';
import { read } from '@/lib/plant/reading';
import { addReadings } from '@/lib/register/commands/add-readings';
import { readingsRequest } from '@/lib/register/commands/readings-request';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { sumOf } from '@/lib/register/commands/swap-before';
import { swapRequest } from '@/lib/register/commands/swap-request';
import { CARRIERS } from '@/lib/register/outbox/carriers';
import { openReadings } from '@/lib/register/queries/open-readings';
import { swapById } from '@/lib/register/queries/swap-by-id';
import { colleague, got, smallPlant } from './plant';

const read6 = (amps: Readings['amps'], more: Partial<Readings> = {}): Readings => ({ ...NO_READINGS, amps, ...more });

/** The pump of P-101 takes 3.1 kW at 350 rpm; with a ratio of 5 its motor, 3.73 kW and 6.6 A, runs at 83 % of load. */
async function swapped(readings: Readings | null) {
  const plant = await smallPlant();
  const setId = got(plant.sets, 'P-101');
  await db.pumpSet.update({
    where: { siteId_id: { siteId: plant.actor.siteId, id: setId } },
    data: { coupling: { type: 'gear', ratio: 5, efficiencyPct: 100, input: 'hub' } },
  });
  const done = await recordSwap(plant.actor, plant.swap('P-101', 'M-1', 'M-7', { readings }), null);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  return { ...plant, setId, swapId: done.swapId };
}

const later = (swapId: string, readings: Readings, key: string = randomUUID()) => ({
  ...{ key, swapId, readings, takenAt: '2026-11-28T03:12:00.000Z' },
});

test('a swap keeps its readings and what they said', async () => {
  const readings = read6([5.7, 5.6, 5.8], { ticked: ['isolate', 'running'], insulationMohm: 3, overloadA: 6.6 });
  const { actor, swapId, motors } = await swapped(readings);
  const swap = await swapById(actor, swapId);
  expect(swap).toMatchObject({ readings, insulationMohm: 3, overloadA: 6.6, laterReadings: [] });
  expect(swap?.readingFindings.map(({ about, grade }) => [about, grade])).toEqual([
    // IEEE 43-2013 table 3: 5 MΩ below 1 kV.
    ['insulation', 'block'],
    ['overload', 'ok'],
    ['running-current', 'ok'],
    ['current-unbalance', 'ok'],
  ]);
  // The reading of the winding is the motor's too, as one told beside the readings is.
  const motor = await db.motor.findFirstOrThrow({ where: { id: got(motors, 'M-7') } });
  expect(motor.insulationMohm).toBe(3);
});

test('a swap of which nothing was read says nothing, and its sum is what it would be if there were none to tell', async () => {
  const { actor, swapId, swap } = await swapped(null);
  expect(await swapById(actor, swapId)).toMatchObject({ readings: null, readingFindings: [] });
  expect(await openReadings(actor, got((await smallPlant()).sets, 'P-101'))).toBeNull();
  const asked = read(swapRequest, swap('P-101', 'M-7', 'M-8'));
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  const { readings: _none, ...request } = asked.value;
  const told = Object.fromEntries(Object.entries(request).filter(([, value]) => value !== null));
  expect(sumOf(asked.value)).toBe(createHash('sha256').update(JSON.stringify(told)).digest('hex'));
  expect(sumOf({ ...asked.value, readings: NO_READINGS })).not.toBe(sumOf(asked.value));
});

test('insulation told beside the readings and otherwise in them is refused', async () => {
  const { actor, swap } = await smallPlant();
  const readings = { ...NO_READINGS, insulationMohm: 20 };
  expect(await recordSwap(actor, swap('P-101', 'M-1', 'M-7', { readings, insulationMohm: 200 }), null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'readings.insulationMohm', value: '20' }],
  });
});

test('a running current out of the band stands open at the set until a later one is inside', async () => {
  const { actor, setId, swapId } = await swapped(read6([7.4, 7.4, 7.4]));
  expect(await openReadings(actor, setId)).toMatchObject({
    swapId,
    findings: [{ about: 'running-current', have: 7.4 }],
  });

  const mate = await colleague(actor.siteId, 'technician', 'Bo Harrow');
  expect(await addReadings(mate, later(swapId, { ...NO_READINGS, rotation: 'right' }))).toMatchObject({
    outcome: 'saved',
  });
  expect((await openReadings(actor, setId))?.findings).toHaveLength(1);
  await addReadings(mate, later(swapId, read6([5.6, 5.7, 5.7])));
  expect(await openReadings(actor, setId)).toBeNull();

  const swap = await swapById(actor, swapId);
  expect(swap?.laterReadings.map(({ by, findings }) => [by, findings[0]?.about, findings[0]?.grade])).toEqual([
    ['Bo Harrow', 'rotation', 'ok'],
    ['Bo Harrow', 'running-current', 'ok'],
  ]);
  expect(swap?.laterReadings[0]?.takenAt?.toISOString()).toBe('2026-11-28T03:12:00.000Z');
  expect(swap?.readings).toEqual(read6([7.4, 7.4, 7.4]));
});

test('the next swap of the set asks anew', async () => {
  const { actor, setId, swap } = await swapped(read6([7.4, 7.4, 7.4]));
  expect(await recordSwap(actor, swap('P-101', 'M-7', 'M-8'), null)).toMatchObject({ outcome: 'saved' });
  expect(await openReadings(actor, setId)).toBeNull();
});

test('where no current is predicted the reading cannot be judged, and is not open either', async () => {
  const { actor, setId, swapId } = await swapped(null);
  await db.pumpSet.update({
    where: { siteId_id: { siteId: actor.siteId, id: setId } },
    data: { load: { kind: 'constant-torque' } },
  });
  await addReadings(actor, later(swapId, read6([5.7, 5.7, 5.7])));
  const swap = await swapById(actor, swapId);
  expect(swap?.laterReadings[0]?.findings[0]).toMatchObject({ about: 'running-current', grade: 'check', need: null });
  expect(await openReadings(actor, setId)).toBeNull();
});

test('R2 the same readings sent twice are kept once; the same key with others is refused', async () => {
  const { actor, swapId } = await swapped(null);
  const request = later(swapId, read6([5.7, 5.7, 5.7]));
  const both = await Promise.all([addReadings(actor, request), addReadings(actor, request)]);
  const ids = [...both, await addReadings(actor, request)].map((one) =>
    one.outcome === 'saved' ? one.readingsId : '',
  );
  expect(new Set(ids).size).toBe(1);
  expect(await db.swapReading.count({ where: { siteId: actor.siteId } })).toBe(1);
  expect(await db.auditEntry.count({ where: { siteId: actor.siteId, action: 'swap.readings' } })).toBe(1);
  expect(await addReadings(actor, later(swapId, read6([9, 9, 9]), request.key))).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'key' }],
  });
});

test('readings are only ever added to: the database refuses to change or drop them', async () => {
  const { actor, swapId } = await swapped(null);
  await addReadings(actor, later(swapId, read6([5.7, 5.7, 5.7])));
  const where = { siteId: actor.siteId };
  await expect(db.swapReading.updateMany({ where, data: { findings: [] } })).rejects.toThrow(/permission denied/);
  await expect(db.swapReading.deleteMany({ where })).rejects.toThrow(/permission denied/);
});

test.each([
  ['an unknown key', { volts: 400 }, 'volts'],
  ['an unknown step', { ticked: ['dance'] }, 'ticked.0'],
  ['a negative reading', { insulationMohm: -1 }, 'insulationMohm'],
  ['an overload of nothing', { overloadA: 0 }, 'overloadA'],
  ['two phases', { amps: [1, 2] }, 'amps'],
  ['a turn that is neither', { rotation: 'left' }, 'rotation'],
])('S1 %s is refused by its name', (_what, sent, path) => {
  const told = read(readingsSchema, sent);
  if (told.ok) throw new Error('taken');
  expect(told.problems.map((one) => one.path)).toContain(path);
});

test('readings that tell nothing are no readings', () => {
  const told = read(readingsRequest, { key: randomUUID(), swapId: randomUUID(), readings: {} });
  expect(told).toMatchObject({ ok: false, problems: [{ path: 'readings' }] });
  expect(read(readingsSchema, {})).toEqual({ ok: true, value: NO_READINGS });
});

test('R2 R5 readings that waited on a phone are kept once, of a swap by its id or by the key it was sent under', async () => {
  const { actor, swap } = await smallPlant();
  const request = swap('P-101', 'M-1', 'M-7');
  const done = await recordSwap(actor, request, null);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  const readings = { rotation: 'right', amps: [5.7, 5.6, 5.8] };
  const send = (of: object, key: string) =>
    CARRIERS.readings.carryOut(actor, {
      version: 2,
      key,
      body: { ...of, readings, takenAt: '2026-11-28T03:12:00Z' },
    });
  const key = randomUUID();
  const first = await send({ swapKey: request.key }, key);
  expect(first).toMatchObject({ outcome: 'saved', isRepeat: false });
  expect(await send({ swapKey: request.key }, key)).toEqual({ ...first, isRepeat: true });
  expect(await send({ swapId: done.swapId }, randomUUID())).toMatchObject({ outcome: 'saved', isRepeat: false });
  expect((await swapById(actor, done.swapId))?.laterReadings).toHaveLength(2);
  expect(await send({ swapKey: randomUUID() }, randomUUID())).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'body.swapKey' }],
  });
  const wrong = { swapId: done.swapId, readings: { volts: 1 } };
  expect(await CARRIERS.readings.carryOut(actor, { version: 2, key, body: wrong })).toMatchObject({
    outcome: 'refused',
    problems: expect.arrayContaining([expect.objectContaining({ path: 'body.readings.volts' })]),
  });
});

test('a swap that waited on a phone keeps the readings told with it', async () => {
  const { actor, swap } = await smallPlant();
  const { key, ...said } = swap('P-101', 'M-1', 'M-7', { readings: { ...NO_READINGS, rotation: 'right' } });
  const done = await CARRIERS.swap.carryOut(actor, { version: 2, key, body: { ...said, judged: null } });
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  expect(await swapById(actor, done.id)).toMatchObject({
    readings: { rotation: 'right' },
    readingFindings: [{ grade: 'ok' }],
  });
});
