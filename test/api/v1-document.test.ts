import { expect, test } from 'vitest';
import { BODIES, WRONG } from '@/app/api/v1/examples/bodies';
import { METHODS_AT } from '@/app/api/v1/methods-at';
import { OPERATIONS } from '@/app/api/v1/operations';
import { curlOf } from '@/app/api-docs/curl-of';
import { toldOperations } from '@/app/api-docs/told-operation';
import { read } from '@/lib/plant/reading';
import { signedIn } from './signed-in';
import { ask, mayBeSent, openApi, routesByPath } from './v1';

test('S14 the document and the routes are the same, both ways', () => {
  const told = OPERATIONS.map(({ method, path }) => `${method.toUpperCase()} ${path}`).sort();
  const there = [...routesByPath]
    .flatMap(([path, route]) => Object.keys(route).map((method) => `${method} ${path}`))
    .sort();
  expect(there).toEqual(told);
  const written = Object.entries(openApi.paths ?? {}).flatMap(([path, item]) =>
    Object.keys(item as object).map((method) => `${method.toUpperCase()} ${path}`),
  );
  expect(written.sort()).toEqual(told);
  const passed = Object.entries(METHODS_AT).flatMap(([path, methods]) => methods.map((method) => `${method} ${path}`));
  expect(passed.sort()).toEqual(told);
  expect(openApi.openapi).toBe('3.1.0');
  const ids = OPERATIONS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('S14 the published document is the one that answers are held against', async () => {
  const { cookie } = await signedIn('technician');
  expect((await ask('GET', '/openapi.json', { cookie })).body).toEqual(JSON.parse(JSON.stringify(openApi)));
});

test('S14 everything that the document points to is in it', () => {
  const text = JSON.stringify(openApi);
  const names = [...text.matchAll(/"\$ref":"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => String(name));
  expect(names).toContain('Problem');
  expect(Object.keys(openApi.components?.schemas ?? {})).toEqual(expect.arrayContaining(names));
});

test('S13 S14 the document tells the scope of each operation', () => {
  const scopes = (path: string, method: 'get' | 'post' | 'patch') =>
    openApi.paths?.[path]?.[method]?.security?.flatMap(({ token = [] }) => token);
  expect(scopes('/sets', 'get')).toEqual(['read']);
  expect(scopes('/sets/{tag}', 'patch')).toEqual(['write']);
  expect(scopes('/assess', 'post')).toEqual(['assess', 'write']);
  for (const { path, method } of OPERATIONS) expect(scopes(path, method)?.length, path).toBeGreaterThan(0);
});

/** Operations that take JSON, each with its example and what it reads by. */
const sent = OPERATIONS.flatMap(({ id, method, path, body }) => {
  const type = body?.types.find((one) => one.endsWith('json'));
  return body && type ? [{ id, method, path, type, schema: body.schema, example: BODIES[id] ?? {} }] : [];
});

test.each(sent)('S1 S14 what the document says may be sent to $id is what is read there', ({ id, ...one }) => {
  const { method, path, type, schema, example } = one;
  expect(Object.keys(BODIES)).toContain(id);
  for (const [body, isRight] of [
    [example, true],
    [{ ...example, colour: 'red' }, false],
    [[example], false],
    [null, false],
  ] as const) {
    expect(read(schema, body).ok, JSON.stringify(body)).toBe(isRight);
    expect(mayBeSent(method, path, type, body), JSON.stringify(body)).toBe(isRight);
  }
});

test('S14 the document refuses what the routes refuse, and takes what they take', () => {
  const of = (id: string) => sent.find((one) => one.id === id);
  for (const [id, body, isRight] of [
    ['makeSet', WRONG, false],
    ['makeSet', { tag: 'P-1' }, false],
    ['makeSet', { tag: 'P-1', mounting: 'face', load: null, note: null }, true],
    ['changeSet', {}, true],
    ['changeSet', { tag: null }, false],
    ['changeSet', { pump: { serial: 'L-1' } }, true],
    ['changeSet', { surroundings: { classification: { tempC: 100 } } }, true],
    ['changeSet', { surroundings: { classification: { zone: 3 } } }, false],
    ['makeSet', { tag: 'P-1', mounting: 'foot', surroundings: { classification: { tempC: 100 } } }, false],
    ['changeMotor', { ratings: [{ volts: -1 }] }, false],
    ['changeMotor', { brake: { volts: 230 } }, true],
    ['makeMotor', { id: 'M-1', place: 'lost' }, false],
    ['recordSwap', { ...BODIES.recordSwap, why: '' }, false],
    ['plate', { text: 'x'.repeat(64_001) }, false],
  ] as const) {
    const one = of(id);
    expect(one && read(one.schema, body).ok, `${id} ${JSON.stringify(body).slice(0, 80)}`).toBe(isRight);
    expect(one && mayBeSent(one.method, one.path, one.type, body), id).toBe(isRight);
  }
});

test('the page tells every operation of the document, with an example of how it is asked', () => {
  const told = toldOperations(openApi);
  expect(told.map(({ id }) => id)).toEqual(OPERATIONS.map(({ id }) => id));
  for (const operation of told) {
    const { id, method, path, answers, asked, body, scopes } = operation;
    const curl = curlOf(operation);
    expect(curl, id).not.toMatch(/[{]\w+[}]|undefined/);
    if (!path.includes('{')) expect(curl, id).toContain(`/api/v1${path}`);
    if (method !== 'GET') expect(curl, id).toContain(`-X ${method}`);
    for (const { name, where, isNeeded, what } of asked) {
      expect(what, `${id} ${name}`).not.toBe('');
      if (isNeeded && where === 'query') expect(curl, id).toContain(`${name}=`);
      if (isNeeded && where === 'header') expect(curl, id).toContain(`${name}: `);
    }
    if (body !== null) expect(body.example, id).toBeDefined();
    expect(scopes.length, id).toBeGreaterThan(0);
    if (id !== 'readDocument') expect(answers.find(({ status }) => status < 300)?.example, id).toBeDefined();
  }
});
