import { beforeAll, expect, test } from 'vitest';
import { BODIES } from '@/app/api/v1/examples/bodies';
import { OPERATIONS } from '@/app/api/v1/operations';
import { db } from '@/lib/db/client';
import { addMotors, addSets, plainSet, plate } from '../register/plant';
import { slowness } from '../yardstick';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  planner = await signedIn('planner');
  await addSets(planner.actor, plainSet('P-900'));
  await addMotors(planner.actor, { motor: plate('M-900'), at: { place: 'at-repair' } });
});

const sent = OPERATIONS.filter(({ body }) => body?.types.some((type) => type.endsWith('json')));
const PARTS: Readonly<Record<string, string>> = { tag: 'P-900', number: 'M-900', id: crypto.randomUUID() };

const megabyte = 'x'.repeat(1024 * 1024);
const deep = 100_000;

/** Each with a body of the operation's own example to spoil. */
const HOSTILE: readonly [what: string, body: (example: object) => string | Uint8Array][] = [
  ['nothing', () => ''],
  ['null', () => 'null'],
  ['a list', () => '[]'],
  ['a figure', () => '3'],
  ['half of it', (example) => JSON.stringify(example).slice(0, -1)],
  ['two of it', (example) => JSON.stringify(example).repeat(2)],
  ['no UTF-8', () => Uint8Array.from([0x22, 0xff, 0x22])],
  ['lists within lists', () => '['.repeat(deep) + ']'.repeat(deep)],
  ['groups within groups', () => `${'{"a":'.repeat(deep)}1${'}'.repeat(deep)}`],
  ['a prototype', (example) => JSON.stringify(example).replace('{', '{"__proto__":{"isAdmin":true},')],
  ['a constructor', (example) => JSON.stringify(example).replace('{', '{"constructor":{"prototype":{}},')],
  ...(['1e309', '-1e309', JSON.stringify(megabyte), '"\\u0000"', '"\\ud800"', '{"$gt":0}'] as const).map(
    (value): [string, (example: object) => string] => [
      `${value.slice(0, 12)} at every key`,
      (example) => `{${Object.keys(example).map((key) => `${JSON.stringify(key)}:${value}`)}}`,
    ],
  ),
];

test.each(HOSTILE)('S5 R1 %s is refused wherever it is sent, and nothing is kept of it', async (_, spoilt) => {
  const { cookie, actor } = planner;
  const where = { siteId: actor.siteId };
  const kept = () => Promise.all([db.auditEntry.count({ where }), db.seenRequest.count({ where })]);
  const before = await kept();
  for (const { id, method, path, body, isGuarded, once } of sent) {
    const at = path.replaceAll(/\{(\w+)\}/g, (part, name: string) => PARTS[name] ?? part);
    const headers = {
      'content-type': body?.types[0] ?? '',
      ...(isGuarded && { 'if-match': String((await ask('GET', at, { cookie })).headers.get('etag')) }),
      ...(once && { 'idempotency-key': crypto.randomUUID() }),
    };
    const begun = performance.now();
    const { status } = await ask(method, at, { cookie, headers, body: spoilt(BODIES[id] ?? {}) });
    // Whatever is pasted as a plate is read as far as it can be.
    const right = id === 'plate' ? [200, 400, 413, 422] : [400, 404, 413, 422];
    expect(right, `${id} ${status}`).toContain(status);
    const took = performance.now() - begun;
    if (took > 20_000) expect(took, id).toBeLessThan(20_000 * slowness());
  }
  expect(await kept()).toEqual(before);
});
