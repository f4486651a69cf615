import { expect, test } from 'vitest';
import { OUTBOX_VERSION, type OutboxBodies, type OutboxKind, type OutboxMessage } from '@/lib/offline/outbox';
import { withWaiting } from '@/lib/offline/with-waiting';
import { inSet, packMotor, packSet, plantOf } from './in-hand';

const message = <K extends OutboxKind>(kind: K, body: OutboxBodies[K], key = 'key'): OutboxMessage<K> => ({
  ...{ version: OUTBOX_VERSION, kind, key, userId: 'u', siteId: 's', body },
});
const swap: OutboxBodies['swap'] = {
  ...{ setId: 'set P-1', motorInId: 'motor M-9', motorOutId: 'motor M-1', fromSetId: null },
  ...{ outTo: { place: 'at-repair' }, why: 'Bearing', note: null, workDone: [], checks: [] },
  ...{ insulationMohm: null, overloadA: null, shimsPresentMm: null, doneAt: null, readings: null, judged: null },
};
const fault = { id: 'f', says: 'Smell', at: '2026-11-28T03:00:00Z', by: 'Ida Fenn' };
const plant = plantOf(
  [packSet('P-1', { faults: [fault] }), packSet('P-2')],
  [packMotor('M-1', inSet('P-1')), packMotor('M-2', inSet('P-2')), packMotor('M-9')],
);
const placeOf = (of: typeof plant, number: string) => {
  const { place, setId, shelfId } = of.motors.get(`motor ${number}`) ?? {};
  return [place, setId, shelfId];
};

test('nothing that waits changes nothing', () => {
  expect(withWaiting(plant, [])).toBe(plant);
});

test('a swap that waits is seen as done, and what was there before is left as it was', () => {
  const next = withWaiting(plant, [message('swap', swap)]);
  expect(placeOf(next, 'M-9')).toEqual(['in-set', 'set P-1', null]);
  expect(placeOf(next, 'M-1')).toEqual(['at-repair', null, null]);
  expect(next.sets.get('set P-1')?.faults).toEqual([]);
  expect(placeOf(plant, 'M-9')).toEqual(['on-shelf', null, 'shelf']);
  expect(plant.sets.get('set P-1')?.faults).toEqual([fault]);
});

test('a motor taken from another set leaves that one empty, one put on a shelf lies there', () => {
  const taken = { ...swap, motorInId: 'motor M-2', fromSetId: 'set P-2' };
  const next = withWaiting(plant, [message('swap', { ...taken, outTo: { place: 'on-shelf', shelfId: 'B2' } })]);
  expect(placeOf(next, 'M-2')).toEqual(['in-set', 'set P-1', null]);
  expect(placeOf(next, 'M-1')).toEqual(['on-shelf', null, 'B2']);
});

test('a swap of motors that the pack does not hold breaks nothing', () => {
  const next = withWaiting(plant, [message('swap', { ...swap, motorInId: 'gone', setId: 'gone' })]);
  expect(next.motors.size).toBe(plant.motors.size);
});

test('a fault that waits is open, and closed again by its key; one of the register by its id', () => {
  const told = message('fault', { setId: 'set P-2', seen: ['seized'], says: null, seenAt: fault.at }, 'k');
  const open = withWaiting(plant, [told]);
  expect(open.sets.get('set P-2')?.faults).toMatchObject([{ id: 'k', says: 'Seized', at: fault.at }]);
  const closed = { how: 'Cleared', doneAt: null };
  const next = withWaiting(plant, [
    told,
    message('fault-closed', { ...closed, faultId: null, faultKey: 'k' }),
    message('fault-closed', { ...closed, faultId: 'f', faultKey: null }),
  ]);
  expect([...next.sets.values()].flatMap(({ faults }) => faults)).toEqual([]);
});
