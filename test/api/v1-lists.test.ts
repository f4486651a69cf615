import { beforeAll, expect, test } from 'vitest';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { addMotors, addSets, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
/** The longest names, in letters that take three bytes each. */
const long = (end: string, length: number) => '号'.repeat(length - 1) + end;

beforeAll(async () => {
  planner = await signedIn('planner');
  await registerPlaces(planner.actor, {
    areas: [{ name: long('a', 80) }, { name: long('b', 80) }, { name: 'C' }],
    stores: [
      { name: long('a', 80), shelves: [long('1', 80), long('2', 80)] },
      { name: 'S', shelves: ['1', '2'] },
    ],
  });
  await addSets(planner.actor, ...['a', 'b', 'c'].map((end) => plainSet(long(end, 60))));
  await addMotors(
    planner.actor,
    ...['a', 'b', 'c'].map((end) => ({ motor: plate(long(end, 60)), at: { place: 'at-repair' } as const })),
  );
});

const by = (more: Parameters<typeof ask>[2] = {}) => ({ cookie: planner.cookie, ...more });

/** A list part by part, with what is done between two parts. */
async function walked(path: string, between: () => Promise<unknown> = async () => null): Promise<string[]> {
  const ids: string[] = [];
  for (let after: string | null = null; ; await between()) {
    const part = await ask('GET', path, by({ query: { limit: '1', ...(after !== null && { after }) } }));
    expect(part.status, path).toBe(200);
    expect(part.body.items.length).toBeLessThanOrEqual(1);
    ids.push(...part.body.items.map(({ id }: { id: string }) => id));
    after = part.body.next;
    if (after === null) return ids;
  }
}

test.each([
  ['/sets', 3],
  ['/motors', 3],
  ['/areas', 3],
  ['/shelves', 4],
])('R10 %s is walked to its end however long the names are, each once', async (path, count) => {
  const ids = await walked(path);
  expect(ids).toHaveLength(count);
  expect(new Set(ids).size).toBe(count);
});

test('what was there when the walk began is met exactly once, though rows are entered before and behind', async () => {
  const before = (await ask('GET', '/motors', by())).body.items.map(({ id }: { id: string }) => id);
  let made = 0;
  const met = await walked('/motors', async () => {
    made += 1;
    if (made > 6) return;
    const at = { place: 'at-repair' } as const;
    await addMotors(planner.actor, { motor: plate(`0-${made}`), at }, { motor: plate(`龠-${made}`), at });
  });
  expect(made).toBeGreaterThan(3);
  for (const id of before) expect(met.filter((one) => one === id)).toHaveLength(1);
  expect(new Set(met).size).toBe(met.length);
});

test.each([
  ['a word', 'nowhere'],
  ['another list’s', Buffer.from('["a","b"]').toString('base64url')],
  ['figures', Buffer.from('[1]').toString('base64url')],
  ['a group', Buffer.from('{"a":1}').toString('base64url')],
  ['a nought', Buffer.from('["a\\u0000"]').toString('base64url')],
  ['nothing', ''],
  ['too long', 'W'.repeat(3_000)],
])('S5 a place that is %s is refused at “after”', async (_, after) => {
  const { status, body } = await ask('GET', '/sets', by({ query: { after } }));
  expect([status, body.problems[0].path]).toEqual([422, 'after']);
});

test.each([
  ['limit', '0'],
  ['limit', '201'],
  ['limit', '1.5'],
  ['limit', 'NaN'],
  ['limit', '1e309'],
  ['limit', ''],
  ['q', 'a\0b'],
  ['q', 'x'.repeat(201)],
  ['colour', 'red'],
])('S1 S5 a list asked with %s=%s is refused there', async (key, value) => {
  for (const path of ['/sets', '/motors']) {
    const { status, body } = await ask('GET', path, by({ query: { [key]: value } }));
    expect([status, body.problems[0].path], path).toEqual([422, key]);
  }
});
