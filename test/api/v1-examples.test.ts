import { beforeAll, expect, test } from 'vitest';
import { BODIES, FILE, WRONG } from '@/app/api/v1/examples/bodies';
import { AREA, CHANGE, IMPORT, MOTOR_IN, MOTOR_OUT, SET, SHELF, STORE, SWAP } from '@/app/api/v1/examples/ids';
import { OPERATIONS } from '@/app/api/v1/operations';
import { workOnImport } from '@/lib/register/import/work-on-import';
import { addMotors, got } from '../register/plant';
import { signedIn } from './signed-in';
import { type Asked, ask } from './v1';

/** What the examples ask, really asked in turn, with the ids of the examples for those that came. */
const told: Record<string, unknown> = {};

beforeAll(async () => {
  const { actor, cookie } = await signedIn('planner');
  const ids = new Map<string, string>();
  const exchanged = (value: unknown, pairs: [string, string][]) =>
    JSON.parse(pairs.reduce((text, [from, to]) => text.replaceAll(from, to), JSON.stringify(value)));
  const go = async (id: string, path: string, asked: Asked = {}) => {
    const method = OPERATIONS.find((one) => one.id === id)?.method ?? 'none';
    const body = BODIES[id] && { body: exchanged(BODIES[id], [...ids]) };
    const answer = await ask(method, path, { cookie, ...body, ...asked });
    expect(answer.status, `${id} ${JSON.stringify(answer.body)}`).toBeLessThan(300);
    return answer;
  };
  const keep = async (id: string, path: string, asked: Asked = {}, made?: string) => {
    const { body } = await go(id, path, asked);
    if (made !== undefined) ids.set(made, body.id ?? body.swapId);
    if (typeof body.changeId === 'string') ids.set(CHANGE, body.changeId);
    told[id] = shortened(
      exchanged(
        body,
        [...ids].map(([shown, real]) => [real, shown]),
      ),
    );
  };
  const one = { query: { limit: '1' } };
  const asRead = async (path: string) => {
    const { headers } = await ask('GET', path, { cookie });
    return { headers: { 'if-match': String(headers.get('etag')) } };
  };
  await keep('makeArea', '/areas', {}, AREA);
  await keep('makeStore', '/stores', {}, STORE);
  await keep('makeShelf', '/shelves', {}, SHELF);
  await keep('makeSet', '/sets', {}, SET);
  await keep('makeMotor', '/motors', {}, MOTOR_IN);
  const failed = { id: 'M-904', frame: '132S', mounting: 'IM B3', poles: 4 };
  const at = { place: 'in-set', setId: ids.get(SET) ?? '' } as const;
  ids.set(MOTOR_OUT, got(await addMotors(actor, { motor: failed, at }), 'M-904'));
  await keep('listSets', '/sets', one);
  await keep('listMotors', '/motors', one);
  await keep('listAreas', '/areas', one);
  await keep('listStores', '/stores', one);
  await keep('listShelves', '/shelves', one);
  await keep('readSet', '/sets/P-900');
  await keep('readMotor', '/motors/M-900');
  await keep('changeSet', '/sets/P-900', await asRead('/sets/P-900'));
  await keep('changeMotor', '/motors/M-900', await asRead('/motors/M-900'));
  await keep('findings', '/sets/P-900/findings', one);
  await keep('purchase', '/purchase', { query: { tag: 'P-900' } });
  await keep('recordSwap', '/swaps', { headers: { 'idempotency-key': crypto.randomUUID() } }, SWAP);
  await keep('assess', '/assess');
  await keep('plate', '/plate');
  await keep('frame', '/frames/184TC');
  const file = { body: FILE, headers: { 'content-type': 'text/csv' }, query: { kind: 'sets', name: 'plates.csv' } };
  await keep('startImport', '/imports', file, IMPORT);
  const run = { siteId: actor.siteId, runId: ids.get(IMPORT) ?? '', userId: actor.userId };
  const work = () => workOnImport(run, new AbortController().signal);
  await work();
  await keep('confirmImport', `/imports/${run.runId}/columns`);
  await work();
  await keep('readImport', `/imports/${run.runId}`);
  await keep('importRows', `/imports/${run.runId}/rows`, { query: { outcome: 'refused', limit: '1' } });
  await keep('steerImport', `/imports/${run.runId}/steps`);
  told.problem = (await ask('POST', '/sets', { cookie, body: WRONG })).body;
});

const SHORTENED = ['groups', 'demands', 'options'];

/** Of the longest lists the first two, as the document says. */
function shortened(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shortened);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => {
      if (SHORTENED.includes(key) && Array.isArray(inner)) return [key, shortened(inner.slice(0, 2))];
      if (key === 'findings') return [key, shortened(inner.slice(0, 2))];
      if (key === 'dimensions') return [key, Object.fromEntries(Object.entries(inner).slice(0, 2))];
      return [key, shortened(inner)];
    }),
  );
}

test('S14 the answers that the document shows are those that the routes give', async () => {
  await expect(`${JSON.stringify(told, null, 2)}\n`).toMatchFileSnapshot('../../app/api/v1/examples/answers.json');
});

test('S14 every operation shows what it answers', () => {
  const shown = Object.keys(told).filter((id) => id !== 'problem');
  expect(shown.sort()).toEqual(
    OPERATIONS.map(({ id }) => id)
      .filter((id) => id !== 'readDocument')
      .sort(),
  );
});
