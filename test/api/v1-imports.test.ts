import { beforeAll, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { workOnImport } from '@/lib/register/import/work-on-import';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
let stranger: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  planner = await signedIn('planner');
  stranger = await signedIn('planner');
});

const LIST = 'Tag,Held by,Service\nV1-1,foot,Whey\nV1-2,hanging,Brine\n';
const by = (more: Parameters<typeof ask>[2] = {}) => ({ cookie: planner.cookie, ...more });
const headers = { 'content-type': 'text/csv' };
const query = { kind: 'sets', name: 'plates.csv' };
const work = (runId: string) =>
  workOnImport({ siteId: planner.actor.siteId, runId, userId: planner.actor.userId }, new AbortController().signal);

test('a file goes in over the API: sent, confirmed, looked at, written and taken back', async () => {
  const sent = await ask('POST', '/imports', by({ body: LIST, headers, query }));
  expect(sent.status).toBe(202);
  const path = `/imports/${sent.body.id}`;
  expect(sent.headers.get('location')).toBe(`/api/v1${path}`);
  expect((await ask('POST', `${path}/columns`, by({ body: {} }))).status).toBe(409);
  await work(sent.body.id);
  const read = await ask('GET', path, by());
  expect(read.body).toMatchObject({ status: 'ready', written: { delimiter: ',' }, fileName: 'plates.csv' });
  expect(read.body.columns.map(({ field }: { field: string }) => field)).toEqual(['tag', 'mounting', 'service']);
  const twice = [{ index: 0, field: 'service' }];
  expect((await ask('POST', `${path}/columns`, by({ body: { columns: twice } }))).status).toBe(422);
  expect((await ask('POST', `${path}/columns`, by({ body: {} }))).status).toBe(202);
  await work(sent.body.id);
  expect((await ask('GET', path, by())).body.counts).toMatchObject({ new: 1, refused: 1 });
  const refused = await ask('GET', `${path}/rows`, by({ query: { outcome: 'refused' } }));
  expect(refused.body.items[0]).toMatchObject({
    line: 3,
    key: 'V1-2',
    problems: [{ field: 'mounting', value: 'hanging' }],
  });
  const first = await ask('GET', `${path}/rows`, by({ query: { limit: '2' } }));
  const rest = await ask('GET', `${path}/rows`, by({ query: { limit: '2', after: first.body.next } }));
  expect([...first.body.items, ...rest.body.items].map(({ line }: { line: number }) => line)).toEqual([1, 2, 3]);
  expect((await ask('POST', `${path}/steps`, by({ body: { step: 'apply' } }))).status).toBe(202);
  await work(sent.body.id);
  expect((await ask('GET', '/sets/V1-1', by())).status).toBe(200);
  expect((await ask('POST', `${path}/steps`, by({ body: { step: 'apply' } }))).status).toBe(409);
  await ask('POST', `${path}/steps`, by({ body: { step: 'undo' } }));
  await work(sent.body.id);
  expect((await ask('GET', path, by())).body.status).toBe('undone');
});

test('R2 the same sending under one key is one import', async () => {
  const more = { ...headers, 'idempotency-key': 'list of today'.replaceAll(' ', '-') };
  const sent = await Promise.all(
    [1, 2, 3].map(() => ask('POST', '/imports', by({ body: LIST, headers: more, query }))),
  );
  expect(new Set(sent.map(({ body }) => body.id)).size).toBe(1);
  expect((await ask('POST', '/imports', by({ body: `${LIST}\n`, headers: more, query }))).status).toBe(422);
});

test('S6 S15 S26 what is no list, too large, of another type or of another site is refused', async () => {
  const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 1]);
  expect((await ask('POST', '/imports', by({ body: png, headers, query }))).status).toBe(422);
  const large = new Uint8Array(25 * 1024 * 1024 + 1);
  expect((await ask('POST', '/imports', by({ body: large, headers, query }))).status).toBe(413);
  expect(
    (await ask('POST', '/imports', by({ body: LIST, headers: { 'content-type': 'text/html' }, query }))).status,
  ).toBe(415);
  expect((await ask('POST', '/imports', by({ body: LIST, headers, query: { kind: 'pumps' } }))).status).toBe(422);
  const run = await db.importRun.findFirstOrThrow({ where: { siteId: planner.actor.siteId } });
  const { cookie } = stranger;
  expect((await ask('GET', `/imports/${run.id}`, { cookie })).status).toBe(404);
  expect((await ask('GET', `/imports/${run.id}/rows`, { cookie })).status).toBe(404);
  expect((await ask('POST', `/imports/${run.id}/steps`, { cookie, body: { step: 'cancel' } })).status).toBe(404);
});
