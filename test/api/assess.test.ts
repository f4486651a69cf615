import { beforeAll, describe, expect, test } from 'vitest';
import { POST } from '@/app/api/v1/assess/route';
import { db } from '@/lib/db/client';
import { assess } from '@/lib/matching/assess';
import { assessCase } from '@/lib/plant/assess-case';
import { plainSet, plate, settings } from '../register/plant';
import { signedIn } from './signed-in';

let person: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  person = await signedIn('technician');
});

const plain = {
  asOf: '2026-11-25',
  set: { ...plainSet('P-101').set, failed: plate('M-1') },
  candidates: [plate('M-7'), plate('M-8')],
};

const sent = (body: unknown, headers: Record<string, string> = {}) =>
  POST(
    new Request('http://localhost:3000/api/v1/assess', {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: person.cookie, ...headers },
      body: typeof body === 'string' || body instanceof Uint8Array ? (body as BodyInit) : JSON.stringify(body),
    }),
  );

test('the answer is what the engine says, with the settings of the asker’s site', async () => {
  const answer = await sent(plain);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toMatch(/^application\/json/);
  const told = await answer.json();
  expect(told).toEqual(JSON.parse(JSON.stringify(assess(assessCase.parse(plain), settings))));
  expect(told.results).toHaveLength(2);
  expect(told.results[0]).toMatchObject({ id: 'M-7', rank: 1, hours: settings.hours.swap });
});

test('hours are those the site set for itself', async () => {
  const hours = { ...settings.hours, swap: 7 };
  const other = await signedIn('planner');
  await db.site.update({ where: { id: other.actor.siteId }, data: { settings: { ...settings, hours } } });
  const [first] = (await (await sent(plain, { cookie: other.cookie })).json()).results;
  expect(first.hours).toBe(7);
});

describe('S1 a problem tells its path, its value and what is right', () => {
  test.each([
    ['an unknown key', { ...plain, colour: 'blue' }, { path: 'colour', value: null }],
    [
      'an unknown key within',
      { ...plain, set: { ...plain.set, wings: 2 } },
      { path: 'set.wings', value: null, says: 'is not a key known here' },
    ],
    [
      'hp and kW',
      { ...plain, candidates: [{ ...plate('M-7'), ratings: [{ hp: 5, kw: 3.7 }] }] },
      { path: 'candidates.0.ratings.0.kw', value: '3.7', says: 'give hp or kw, not both' },
    ],
    ['no set', { candidates: [] }, { path: 'set', value: null }],
    [
      'negative volts',
      { ...plain, set: { ...plain.set, supply: { volts: -1 } } },
      { path: 'set.supply.volts', value: '-1' },
    ],
    [
      'one id twice',
      { ...plain, candidates: [plate('M-7'), plate('M-7')] },
      { path: 'candidates.1.id', value: '"M-7"' },
    ],
    ['a list', [], { path: '(whole)' }],
    ['a broken body', '{"set":', { path: '(whole)', value: null, says: expect.stringContaining('is not JSON') }],
    ['an empty body', '', { path: '(whole)', value: null, says: 'is empty: must be JSON' }],
    [
      'S5 a number without end',
      '{"candidates":[],"set":{"tag":"P","mounting":"foot","load":{"shaftKw":1e309}}}',
      { path: 'set.load.shaftKw' },
    ],
  ])('%s', async (name, body, problem) => {
    const answer = await sent(body);
    // What is no JSON at all is a bad request; JSON that is no case is not processed.
    expect(answer.status).toBe(/broken|empty/.test(name) ? 400 : 422);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    const told = await answer.json();
    expect(told.problems).toContainEqual(expect.objectContaining(problem));
    for (const one of told.problems)
      expect(one).toEqual({ path: expect.any(String), value: one.value, says: expect.stringMatching(/\S/) });
  });

  test('every problem at once', async () => {
    const told = await (await sent({ ...plain, colour: 1, set: { ...plain.set, mounting: 'wall', wings: 2 } })).json();
    expect(told.problems.map(({ path }: { path: string }) => path).sort()).toEqual([
      'colour',
      'set.mounting',
      'set.wings',
    ]);
  });
});

describe('S6 what is not a JSON body of at most 2 MB is refused', () => {
  test.each(['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp', 'multipart/form-data'])(
    '%s',
    async (type) => {
      const answer = await sent(plain, { 'content-type': type });
      expect([answer.status, answer.headers.get('content-type')]).toEqual([415, 'application/problem+json']);
    },
  );

  test('a type with its character set is taken', async () => {
    expect((await sent(plain, { 'content-type': 'application/json; charset=utf-8' })).status).toBe(200);
  });

  test('a body over the limit, whatever length it claims', async () => {
    const large = JSON.stringify({ ...plain, note: 'x'.repeat(2 * 1024 * 1024) });
    expect((await sent(large)).status).toBe(413);
    expect((await sent(large, { 'content-length': '10' })).status).toBe(413);
  });

  test('an endless body is not read to its end', async () => {
    let told = 0;
    const endless = new ReadableStream({
      pull(controller) {
        told += 1;
        controller.enqueue(new Uint8Array(65_536));
      },
    });
    const init = {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: person.cookie },
      body: endless,
      duplex: 'half',
    } as RequestInit;
    expect((await POST(new Request('http://localhost:3000/api/v1/assess', init))).status).toBe(413);
    expect(told).toBeLessThan(50);
  });

  test('a large body that is allowed is judged', async () => {
    const candidates = Array.from({ length: 2_000 }, (_, i) => plate(`M-${i}`));
    const body = JSON.stringify({ ...plain, candidates });
    expect(body.length).toBeLessThan(2 * 1024 * 1024);
    expect((await (await sent(body)).json()).results).toHaveLength(2_000);
  });

  test('bytes that are no text', async () => {
    expect((await sent(new Uint8Array([0x7b, 0xff, 0x7d]))).status).toBe(400);
  });
});

test('S25 nobody is answered 401, before the body is looked at', async () => {
  for (const cookie of ['', 'bedplate.session_token=made-up.signature']) {
    const answer = await sent('{', { cookie, 'content-type': 'text/plain' });
    expect([answer.status, answer.headers.get('content-type')]).toEqual([401, 'application/problem+json']);
  }
});

test('S12 the answer is kept nowhere', async () => {
  expect((await sent(plain)).headers.get('cache-control')).toBe('private, no-store');
});
