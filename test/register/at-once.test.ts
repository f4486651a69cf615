import { beforeEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { changeThings } from '@/lib/register/commands/change-things';
import { registerMotors } from '@/lib/register/commands/register-motors';
import { registerShelf } from '@/lib/register/commands/register-place';
import { registerSets } from '@/lib/register/commands/register-sets';
import { got, plainSet, plate, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

interface Done {
  outcome: string;
  problems?: readonly { path: string; says: string }[];
}

/** Five at once: one is saved, each other is told what it met, and nothing breaks. */
async function oneOfFive(work: (i: number) => Promise<Done>, path: string, says: RegExp) {
  const done = await Promise.all([1, 2, 3, 4, 5].map(work));
  expect(done.filter(({ outcome }) => outcome === 'saved')).toHaveLength(1);
  const refused = done.filter(({ outcome }) => outcome === 'refused');
  expect(refused).toHaveLength(4);
  for (const { problems } of refused) expect(problems).toMatchObject([{ path, says: expect.stringMatching(says) }]);
}

test('R4 of five sets entered at once under one tag one stands, and the others are told so', async () => {
  await oneOfFive((i) => registerSets(here.actor, [plainSet('P-900', { note: `${i}` })]), '0.tag', /is already a set/);
  expect(await db.pumpSet.count({ where: { siteId: here.actor.siteId, tag: 'P-900' } })).toBe(1);
});

test('R4 of five motors entered at once under one number one stands', async () => {
  const at = { place: 'at-repair' } as const;
  await oneOfFive(() => registerMotors(here.actor, [{ motor: plate('M-900'), at }]), '0.id', /is already a motor/);
});

test('R4 of five motors entered at once into one empty set one stands in it', async () => {
  const done = await registerSets(here.actor, [plainSet('P-901')]);
  const at = { place: 'in-set', setId: done.outcome === 'saved' ? got(done.ids, 'P-901') : '' } as const;
  await oneOfFive(
    (i) => registerMotors(here.actor, [{ motor: plate(`M-91${i}`), at }]),
    '0.setId',
    /^holds M-91\d: move that first/,
  );
});

test('R4 of five sets renamed alike at once one has the tag', async () => {
  const tags = [1, 2, 3, 4, 5].map((i) => `P-92${i}`);
  const made = await registerSets(
    here.actor,
    tags.map((tag) => plainSet(tag)),
  );
  const ids = made.outcome === 'saved' ? made.ids : new Map();
  await oneOfFive(
    (i) =>
      changeThings(here.actor, [{ thing: 'set', id: got(ids, `P-92${i}`), version: null, edit: { tag: 'P-930' } }]),
    'tag',
    /is already a set/,
  );
});

test('R4 of five shelves added at once under one name one stands', async () => {
  const { storeId } = await db.shelf.findFirstOrThrow({ where: { siteId: here.actor.siteId } });
  await oneOfFive(() => registerShelf(here.actor, storeId, 'B 1'), 'name', /already the name of another/);
});

test('blanks around a tag or a number make it no other', async () => {
  const set = await changeThings(here.actor, [
    { thing: 'set', id: got(here.sets, 'P-102'), version: null, edit: { tag: ' P-101 ' } },
  ]);
  expect(set).toMatchObject({ outcome: 'refused', problems: [{ path: 'tag', value: 'P-101' }] });
  const motor = await changeThings(here.actor, [
    { thing: 'motor', id: got(here.motors, 'M-7'), version: null, edit: { id: 'M-8 ' } },
  ]);
  expect(motor).toMatchObject({ outcome: 'refused', problems: [{ path: 'id', value: 'M-8' }] });
});

test('what a supply is called is kept though nothing else of it is known', async () => {
  const told = { set: { tag: 'P-940', mounting: 'foot' }, supplyName: 'MCC 2, way 14' } as const;
  expect((await registerSets(here.actor, [told])).outcome).toBe('saved');
  const { supply } = await db.pumpSet.findFirstOrThrow({
    where: { siteId: here.actor.siteId, tag: 'P-940' },
    select: { supply: { select: { name: true } } },
  });
  expect(supply).toEqual({ name: 'MCC 2, way 14' });
});
