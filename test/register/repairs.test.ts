import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { repairFigures } from '@/lib/plant/repair-figures';
import { endRepair } from '@/lib/register/commands/end-repair';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { tellRepair } from '@/lib/register/commands/tell-repair';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { lastRepair, repairs } from '@/lib/register/queries/repairs';
import { colleague, got, smallPlant, someone } from './plant';

const figures = repairFigures.parse({ repairCost: 600, newPrice: 1_500, changePts: -0.5, isRewind: true });

async function sent() {
  const plant = await smallPlant();
  const done = await recordSwap(plant.actor, plant.swap('P-101', 'M-1', 'M-7', { why: 'Winding: burnt' }), null);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  const motorId = got(plant.motors, 'M-1');
  const repair = await lastRepair(plant.actor, motorId);
  if (repair === null) throw new Error('no repair');
  return { ...plant, motorId, repair };
}

test('the motor that came out goes to repair with its reason, and stands in the list with its set', async () => {
  const { actor } = await sent();
  expect((await repairs(actor)).motors).toMatchObject([
    { plantNumber: 'M-1', frame: '184T', repair: { reason: 'Winding: burnt', setTag: 'P-101', decision: null } },
  ]);
});

test('one that is scrapped at once is decided and over; one that goes to a shelf has no repair', async () => {
  const { actor, motors, swap, shelfId } = await smallPlant();
  await recordSwap(actor, swap('P-101', 'M-1', 'M-7', { outTo: { place: 'scrapped' } }), null);
  expect(await lastRepair(actor, got(motors, 'M-1'))).toMatchObject({ decision: 'scrap', endedAt: expect.any(Date) });
  await recordSwap(actor, swap('P-102', 'M-2', 'M-8', { outTo: { place: 'on-shelf', shelfId } }), null);
  expect(await lastRepair(actor, got(motors, 'M-2'))).toBeNull();
  expect(await repairs(actor)).toEqual({ motors: [], all: 0 });
});

test('R3 figures and decision are kept with who decided; a save over another’s is refused', async () => {
  const { actor, motorId, repair } = await sent();
  const told = { repairId: repair.repairId, version: repair.version, figures };
  expect(await tellRepair(actor, { ...told, decision: 'repair', why: 'Core sound' })).toEqual({ outcome: 'saved' });
  expect(await lastRepair(actor, motorId)).toMatchObject({
    ...{ figures, decision: 'repair', decidedWhy: 'Core sound', decider: 'Ida Fenn' },
  });
  expect(await tellRepair(actor, { ...told, decision: 'scrap', why: null })).toMatchObject({ outcome: 'refused' });
  const bo = await colleague(actor.siteId, 'technician', 'Bo Harrow');
  await expect(tellRepair(bo, { ...told, decision: null, why: null })).rejects.toThrow('Not allowed');
});

test('it ends when the motor is back on a shelf, and the next failure is another repair', async () => {
  const { actor, motorId, shelfId, swap } = await sent();
  expect(await endRepair(actor, { motorId, to: { place: 'on-shelf', shelfId } })).toEqual({ outcome: 'saved' });
  expect((await motorByNumber(actor, 'M-1'))?.whereabouts).toMatchObject({ place: 'on-shelf', shelf: 'A1' });
  expect(await lastRepair(actor, motorId)).toMatchObject({ endedAt: expect.any(Date) });
  expect(await endRepair(actor, { motorId, to: { place: 'scrapped' } })).toMatchObject({ outcome: 'refused' });
  await recordSwap(actor, swap('P-101', 'M-7', 'M-1', {}), null);
  await recordSwap(actor, swap('P-101', 'M-1', 'M-8', { why: 'Bearing' }), null);
  expect(await db.repair.count({ where: { siteId: actor.siteId, motorId } })).toBe(2);
  expect(await lastRepair(actor, motorId)).toMatchObject({ reason: 'Bearing', endedAt: null });
});

test('S26 a stranger neither tells nor ends it', async () => {
  const { motorId, repair } = await sent();
  const stranger = await someone('administrator');
  const told = { repairId: repair.repairId, version: repair.version, figures, decision: null, why: null };
  expect(await tellRepair(stranger, told)).toMatchObject({ outcome: 'refused' });
  expect(await endRepair(stranger, { motorId, to: { place: 'scrapped' } })).toMatchObject({ outcome: 'refused' });
});
