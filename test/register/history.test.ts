import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { registerPastSwaps } from '@/lib/register/commands/register-past-swaps';
import { reportFault } from '@/lib/register/commands/report-fault';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { colleague, got, smallPlant } from './plant';

test('a set’s history tells faults, swaps and changes, newest first, each with who', async () => {
  const { actor, sets, motors, swap } = await smallPlant();
  const bo = await colleague(actor.siteId, 'technician', 'Bo Harrow');
  const setId = got(sets, 'P-101');
  await registerPastSwaps(actor, [
    {
      at: new Date('2019-03-04T10:00:00Z'),
      setId,
      motorInId: got(motors, 'M-1'),
      motorOutId: got(motors, 'M-8'),
      outTo: 'at-repair',
      why: 'Bearing',
    },
  ]);
  await reportFault(bo, { setId, seen: [], says: 'Hums and trips' });
  await recordSwap(bo, swap('P-101', 'M-1', 'M-7', { shimsPresentMm: 2 }), null);
  const history = await setHistory(actor, setId);
  const times = history.map(({ at }) => at.getTime());
  expect(times).toEqual([...times].sort((a, b) => b - a));
  expect(history.map((line) => `${line.kind} ${line.kind === 'change' ? line.action : line.by}`).sort()).toEqual([
    'change set.register',
    'change set.shim',
    'fault Bo Harrow',
    'swap Bo Harrow',
    'swap Ida Fenn',
  ]);
  expect(history.at(-1)).toMatchObject({ kind: 'swap', motorIn: 'M-1', motorOut: 'M-8', verdict: null });
});

test('a past swap moves no motor', async () => {
  const { actor, sets, motors } = await smallPlant();
  const past = { at: new Date('2019-03-04T10:00:00Z'), outTo: 'scrapped', why: 'Water' } as const;
  await registerPastSwaps(actor, [
    { ...past, setId: got(sets, 'P-101'), motorInId: got(motors, 'M-7'), motorOutId: got(motors, 'M-8') },
  ]);
  expect((await setByTag(actor, 'P-101'))?.set.failed?.id).toBe('M-1');
  expect((await db.motor.findFirstOrThrow({ where: { siteId: actor.siteId, plantNumber: 'M-7' } })).place).toBe(
    'on-shelf',
  );
});

test('R6 a motor’s history tells every place it was in', async () => {
  const { actor, motors, shelfId, swap } = await smallPlant();
  await recordSwap(actor, swap('P-101', 'M-1', 'M-7'), null);
  await recordSwap(actor, swap('P-101', 'M-7', 'M-8', { outTo: { place: 'on-shelf', shelfId } }), null);
  const moves = (await motorHistory(actor, got(motors, 'M-7')))
    .flatMap((line) => (line.kind === 'change' && line.action === 'motor.move' ? [line] : []))
    .sort((a, b) => a.at.getTime() - b.at.getTime())
    .map(({ changes }) =>
      changes.slice(0, 3).map(({ label, from, to }) => `${label}: ${from ?? 'none'} to ${to ?? 'none'}`),
    );
  expect(moves).toEqual([
    ['Where it is: on a shelf to in a set', 'In the set: none to P-101', 'Shelf: Main / A1 to none'],
    ['Where it is: in a set to on a shelf', 'In the set: P-101 to none', 'Shelf: none to Main / A1'],
  ]);
});

test('R10 no history holds more lines than asked for', async () => {
  const { actor, sets } = await smallPlant();
  const setId = got(sets, 'P-101');
  for (let i = 0; i < 8; i += 1) await reportFault(actor, { setId, seen: [], says: `Fault ${i}` });
  expect(await setHistory(actor, setId, 5)).toHaveLength(5);
});

test.each(['', '   ', 'x'.repeat(2_001)])('S5 a fault that says %j is refused', async (says) => {
  const { actor, sets } = await smallPlant();
  expect(await reportFault(actor, { setId: got(sets, 'P-101'), seen: [], says })).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'says' }],
  });
});

test('S3 what a person wrote is kept letter by letter', async () => {
  const { actor, sets } = await smallPlant();
  const says = `<script>alert(1)</script> '; DROP TABLE motor; -- \u202Eright to left %s $1 \\`;
  await reportFault(actor, { setId: got(sets, 'P-101'), seen: [], says });
  expect((await setByTag(actor, 'P-101'))?.faults[0]?.says).toBe(says);
});
