import { randomUUID } from 'node:crypto';
import { beforeEach, describe, expect, test } from 'vitest';
import { isKnownAction } from '@/app/audit/action-words';
import { NotAllowed } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { type Edit, stateOf } from '@/lib/fields/state';
import { toldChanges } from '@/lib/fields/told-changes';
import type { JudgedAtPump, SwapBody } from '@/lib/offline/outbox';
import { changeThings } from '@/lib/register/commands/change-things';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { sumOf } from '@/lib/register/commands/swap-before';
import { swapRequest } from '@/lib/register/commands/swap-request';
import { CARRIERS } from '@/lib/register/outbox/carriers';
import { auditTrail, WHOLE_TRAIL } from '@/lib/register/queries/audit-trail';
import { swapById } from '@/lib/register/queries/swap-by-id';
import { addMotors, addSets, colleague, got, plainSet, plate, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
let technician: typeof here.actor;
beforeEach(async () => {
  here = await smallPlant();
  technician = await colleague(here.actor.siteId, 'technician', 'Bo Rask');
});

const JUDGED: JudgedAtPump = { verdict: 'swap-with-work', hours: 3.5, at: '2026-11-27T22:04:09.000Z' };

function bodyOf(...asked: Parameters<typeof here.swap>): SwapBody {
  const { key: _key, ...swap } = here.swap(...asked);
  return { ...swap, judged: JUDGED };
}

const send = (body: object, key: string = randomUUID(), version: 1 | 2 = 2, actor = technician) =>
  CARRIERS.swap.carryOut(actor, { version, key, body });
const swaps = () => db.swap.count({ where: { siteId: here.actor.siteId } });
const overtaken = () =>
  db.auditEntry.findMany({ where: { siteId: here.actor.siteId, action: 'swap.overtaken' }, orderBy: { at: 'asc' } });

async function saved(sent: ReturnType<typeof send>) {
  const done = await sent;
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  return done;
}

test('a swap that waited is recorded as the person’s who made it, judged here, with how it was judged at the pump', async () => {
  const { id, isRepeat } = await saved(send(bodyOf('P-101', 'M-1', 'M-7', { note: 'Coupling greased.' })));
  expect(isRepeat).toBe(false);
  const swap = await swapById(technician, id);
  expect(swap).toMatchObject({ by: 'Bo Rask', motorIn: 'M-7', motorOut: 'M-1', why: 'Bearing' });
  expect(swap?.findings.length).toBeGreaterThan(10);
  expect(swap?.note).toBe(
    'Coupling greased.\nRecorded at the pump from a snapshot of 2026-11-27 22:04 UTC, judged there as “swap with work”, 3.5 h.',
  );
});

test('R5 whatever the phone’s clock says, the server’s moment decides the order and the phone’s is kept as a note', async () => {
  const before = new Date();
  for (const [tag, out, into, doneAt] of [
    ['P-101', 'M-1', 'M-7', '2061-01-01T00:00:00Z'],
    ['P-102', 'M-2', 'M-8', '1999-12-31T23:59:59+02:00'],
  ] as const)
    await saved(send(bodyOf(tag, out, into, { doneAt })));
  const rows = await db.swap.findMany({ where: { siteId: here.actor.siteId }, orderBy: { at: 'asc' } });
  expect(rows.map(({ doneAt }) => doneAt?.toISOString())).toEqual([
    '2061-01-01T00:00:00.000Z',
    '1999-12-31T21:59:59.000Z',
  ]);
  for (const { at } of rows) expect(Math.abs(at.getTime() - before.getTime())).toBeLessThan(60_000);
});

describe('R2 R5 one key is carried out once', () => {
  test('sent again it is answered as it was, though the plant has gone on', async () => {
    const [body, key] = [bodyOf('P-101', 'M-1', 'M-7'), randomUUID()];
    const first = await saved(send(body, key));
    await recordSwap(here.actor, here.swap('P-101', 'M-7', 'M-8'), null);
    expect(await send(body, key)).toEqual({ ...first, isRepeat: true });
    expect(await swaps()).toBe(2);
    expect(await overtaken()).toEqual([]);
  });

  test('two tabs that send at once record it once', async () => {
    const [body, key] = [bodyOf('P-101', 'M-1', 'M-7'), randomUUID()];
    const both = await Promise.all([1, 2, 3].map(() => saved(send(body, key))));
    expect(new Set(both.map(({ id }) => id)).size).toBe(1);
    expect(both.filter(({ isRepeat }) => !isRepeat)).toHaveLength(1);
    expect(await swaps()).toBe(1);
  });

  test('a key that was used for something else is refused', async () => {
    const key = randomUUID();
    await saved(send(bodyOf('P-101', 'M-1', 'M-7'), key));
    expect(await send(bodyOf('P-102', 'M-2', 'M-8'), key)).toMatchObject({
      outcome: 'refused',
      problems: [{ path: 'key' }],
    });
    expect(await swaps()).toBe(1);
  });
});

describe('R12 the version before is still taken', () => {
  const versionOne = () => {
    const { judged: _judged, readings: _readings, ...body } = bodyOf('P-101', 'M-1', 'M-7');
    return body;
  };

  test('a swap of it is recorded, and it is said that the judgement at the pump is not known', async () => {
    const { id } = await saved(send(versionOne(), randomUUID(), 1));
    expect((await swapById(technician, id))?.note).toBe('Recorded at the pump. How it was judged there is not known.');
  });

  test('it is strict as well: a key of a later version is not known to it', async () => {
    expect(await send({ ...versionOne(), judged: null }, randomUUID(), 1)).toMatchObject({
      outcome: 'refused',
      problems: [{ path: 'body.judged', says: 'is not a key known here' }],
    });
  });

  test('sent again by a program that asks more, it says the same', async () => {
    const [body, key] = [versionOne(), randomUUID()];
    const first = await saved(send(body, key, 1));
    expect(await send({ ...body, judged: null }, key, 2)).toEqual({ ...first, isRepeat: true });
  });

  test('what is not told counts as not there in the sum of a request', () => {
    const request = swapRequest.parse(here.swap('P-101', 'M-1', 'M-7'));
    expect(sumOf({ ...request, ...{ later: null } })).toBe(sumOf(request));
    expect(sumOf({ ...request, insulationMohm: 1 })).not.toBe(sumOf(request));
    expect(sumOf({ ...request, why: 'Water' })).not.toBe(sumOf(request));
  });
});

test('a motor that is in is never refused as unsuitable; the register keeps its own judgement', async () => {
  const small = plate('M-9');
  await addMotors(here.actor, {
    motor: { ...small, frame: '143T', ratings: [{ volts: 460, hertz: 60, hp: 1, rpm: 1750, amps: 1.5 }] },
    at: { place: 'on-shelf', shelfId: here.shelfId },
  });
  const motorInId = (await db.motor.findFirstOrThrow({ where: { siteId: here.actor.siteId, plantNumber: 'M-9' } })).id;
  const { id } = await saved(send({ ...bodyOf('P-101', 'M-1', 'M-7'), motorInId }));
  const swap = await swapById(technician, id);
  expect(swap).toMatchObject({ verdict: 'unsuitable', motorIn: 'M-9' });
  expect(swap?.note).toContain('judged there as “swap with work”');
});

describe('R4 a swap that somebody else’s came before', () => {
  const told = () =>
    bodyOf('P-101', 'M-1', 'M-7', {
      ...{ note: 'Ran rough', insulationMohm: 90, overloadA: 6.6, doneAt: '2026-11-28T03:04:00Z' },
      workDone: [{ id: 'shims', what: 'Shims under the feet', hours: 1.5 }],
      checks: [{ criterion: 'rotation', says: 'Turns the right way' }],
    });

  test('is told who, when and where it stands now, and what was told is kept for the desk, once', async () => {
    await recordSwap(here.actor, here.swap('P-102', 'M-2', 'M-7'), null);
    const [body, key] = [told(), randomUUID()];
    const answers = [await send(body, key), ...(await Promise.all([send(body, key), send(body, key)]))];
    for (const answer of answers)
      expect(answer).toMatchObject({
        ...{ outcome: 'taken', what: 'motor', by: 'Ida Fenn', setTag: 'P-102', motorNumber: 'M-7' },
        at: expect.any(Date),
      });
    expect(await swaps()).toBe(1);
    const [entry, ...more] = await overtaken();
    expect(more).toEqual([]);
    expect(entry).toMatchObject({
      byId: technician.userId,
      ...{ thing: 'set', thingId: got(here.sets, 'P-101'), before: null },
      after: {
        ...{ motorInId: got(here.motors, 'M-7'), motorOutId: got(here.motors, 'M-1'), requestId: key },
        ...{ why: 'Bearing', insulationMohm: 90, overloadA: 6.6, 'outTo.place': 'at-repair' },
        workDone: ['Shims under the feet (1.5 h)'],
        checks: ['rotation: Turns the right way'],
        note: expect.stringMatching(/^Ran rough\nRecorded at the pump/),
        doneAt: '2026-11-28T03:04:00Z',
      },
    });
  });

  test('is read by the desk in words: motors by their numbers, and no id', async () => {
    await recordSwap(here.actor, here.swap('P-102', 'M-2', 'M-7'), null);
    await send(told());
    const { entries, nameOf } = await auditTrail(here.actor, WHOLE_TRAIL, { after: null, take: 50 });
    const entry = entries.find(({ action }) => action === 'swap.overtaken');
    expect(isKnownAction('swap.overtaken')).toBe(true);
    const lines = toldChanges('set', entry?.before ?? {}, entry?.after ?? {}, 'metric', nameOf);
    expect(lines.map(({ label, to }) => `${label}: ${to}`)).toEqual(
      expect.arrayContaining([
        'Motor in: M-7',
        'Motor out: M-1',
        'Motor out went: at repair',
        'Insulation, MΩ: 90',
        'Work done: Shims under the feet (1.5 h)',
      ]),
    );
    expect(JSON.stringify(lines)).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}/);
  });

  test('can be sent again under its key when the register has been put right', async () => {
    await recordSwap(here.actor, here.swap('P-102', 'M-2', 'M-7'), null);
    const [body, key] = [told(), randomUUID()];
    expect((await send(body, key)).outcome).toBe('taken');
    const edit: Edit = stateOf({ place: 'on-shelf', shelfId: here.shelfId });
    const back = await changeThings(here.actor, [
      { thing: 'motor', id: got(here.motors, 'M-7'), version: null, edit: { ...edit, setId: null } },
    ]);
    expect(back.outcome).toBe('saved');
    await saved(send(body, key));
    expect(await overtaken()).toHaveLength(1);
  });

  test('of many at once exactly one stands, and every other is kept for the desk', async () => {
    await addSets(here.actor, plainSet('P-103'));
    const sets = await db.pumpSet.findMany({ where: { siteId: here.actor.siteId }, orderBy: { tag: 'asc' } });
    const empty = { ...bodyOf('P-101', 'M-1', 'M-8'), motorOutId: null, outTo: null };
    const bodies = [
      bodyOf('P-101', 'M-1', 'M-7'),
      bodyOf('P-102', 'M-2', 'M-7'),
      { ...empty, motorInId: got(here.motors, 'M-7'), setId: sets.find(({ tag }) => tag === 'P-103')?.id },
    ];
    const outcomes = await Promise.all(bodies.map((body) => send(body)));
    expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual(['saved', 'taken', 'taken']);
    expect(await overtaken()).toHaveLength(2);
  });
});

test('S1 every problem of a body is told with its place, and an unknown key by its name', async () => {
  const done = await send({ ...bodyOf('P-101', 'M-1', 'M-7'), why: '', hurry: true });
  expect(done).toMatchObject({
    outcome: 'refused',
    problems: expect.arrayContaining([
      expect.objectContaining({ path: 'body.why' }),
      expect.objectContaining({ path: 'body.hurry', says: 'is not a key known here' }),
    ]),
  });
});

test('S26 S27 nothing of another site is swapped, and nobody is asked who may not', async () => {
  const there = await smallPlant();
  expect(await send(bodyOf('P-101', 'M-1', 'M-7'), randomUUID(), 2, there.actor)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'body.setId' }],
  });
  expect(await swaps()).toBe(0);
  const nobody = { ...technician, role: 'visitor' as typeof technician.role };
  await expect(send(bodyOf('P-101', 'M-1', 'M-7'), randomUUID(), 2, nobody)).rejects.toThrow(NotAllowed);
});
