import fs from 'node:fs';
import { NextRequest } from 'next/server';
import { expect, test } from 'vitest';
import { GET as health } from '@/app/api/health/route';
import { GET as readyz } from '@/app/readyz/route';
import { config, proxy } from '@/proxy';
import { besideIt } from '../db/as-owner';

/** Every route that changes something or takes a body, read from the tree. A page's actions post to the page itself. */
const posted = fs
  .readdirSync('app', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('route.ts'))
  .filter((file) =>
    /export (const|async function|function) (POST|PUT|PATCH|DELETE)\b/.test(fs.readFileSync(`app/${file}`, 'utf8')),
  )
  .map((file) => `/${file.replace(/\/route\.ts$/, '').replaceAll(/\[[^\]]+\]/g, 'x')}`);

const asked = (path: string, method: string, headers: Record<string, string>) =>
  proxy(
    new NextRequest(`http://plant.example:3000${path}`, {
      method,
      headers: { host: 'plant.example:3000', ...headers },
    }),
  );

test('there are routes to refuse', () => {
  expect(posted).toContain('/api/v1/assess');
  expect(posted).toContain('/sign-in/submit');
});

test.each([...posted, '/sets/P-101', '/sets/P-101/swap/M-7'])(
  'S10 a POST to %s from another site is refused',
  (path) => {
    const matched = config.matcher.some((pattern) => new RegExp(`^${pattern}$`).test(path));
    expect(matched, 'the proxy sees it').toBe(true);
    for (const headers of [
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
      { origin: 'http://elsewhere.example' },
      { origin: 'http://plant.example' },
      { origin: 'null' },
    ] as Record<string, string>[])
      for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'])
        expect(asked(path, method, headers).status, JSON.stringify({ method, headers })).toBe(403);
  },
);

test('S10 the refusal has the shape of every other (RFC 9457)', async () => {
  const refused = asked('/api/v1/sets', 'POST', { 'sec-fetch-site': 'cross-site' });
  expect(refused.headers.get('content-type')).toBe('application/problem+json');
  expect(await refused.json()).toMatchObject({ type: 'about:blank', status: 403 });
});

test.each([
  ['PUT', '/api/v1/sets', 405, 'GET, POST, HEAD, OPTIONS'],
  ['DELETE', '/api/v1/sets/A%2FB', 405, 'GET, PATCH, HEAD, OPTIONS'],
  ['GET', '/api/v1/swaps', 405, 'POST, OPTIONS'],
  ['DELETE', '/api/v1/motors', 405, 'GET, POST, HEAD, OPTIONS'],
  ['GET', '/api/v1', 404, null],
  ['GET', '/api/v1/set', 404, null],
  ['POST', '/api/v1/sets/P-101/findings/more', 404, null],
  ['GET', '/api/v1/openapiXjson', 404, null],
])('S6 S8 %s %s is %d, told as every refusal', async (method, path, status, allow) => {
  const refused = asked(path, method, {});
  expect([refused.status, refused.headers.get('allow')]).toEqual([status, allow]);
  expect(refused.headers.get('content-type')).toBe('application/problem+json');
  expect(refused.headers.get('x-content-type-options')).toBe('nosniff');
  expect(await refused.json()).toMatchObject({ type: 'about:blank', status });
});

test('S6 a path that the API has passes to its route', () => {
  for (const [method, path] of [
    ['GET', '/api/v1/sets'],
    ['HEAD', '/api/v1/sets/P%20101'],
    ['OPTIONS', '/api/v1/swaps'],
    ['PATCH', '/api/v1/motors/M-1'],
    ['GET', '/api/v1/frames/182%2F4T'],
    ['GET', '/api/v12'],
  ] as const)
    expect([path, asked(path, method, {}).status]).toEqual([path, 200]);
});

test('S10 a POST of this site, or of no browser, passes', () => {
  for (const headers of [{ 'sec-fetch-site': 'same-origin' }, { origin: 'http://plant.example:3000' }, {}] as Record<
    string,
    string
  >[])
    expect(asked('/api/v1/assess', 'POST', headers).status).toBe(200);
});

test('S7 every answer has a policy with a nonce of its own and nothing unsafe for scripts', () => {
  const policies = [asked('/', 'GET', {}), asked('/', 'GET', {})].map((answer) =>
    answer.headers.get('content-security-policy'),
  );
  expect(policies[0]).not.toBe(policies[1]);
  const scripts = /script-src ([^;]*)/.exec(String(policies[0]))?.[1];
  expect(scripts).toMatch(/'nonce-[\w+/=]{16,}'/);
  expect(scripts).not.toMatch(/'unsafe-(inline|eval)'/);
});

test('S8 the plain headers are on every answer', () => {
  const { headers } = asked('/sets', 'GET', {});
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
  expect(headers.get('referrer-policy')).toBe('same-origin');
  expect(headers.get('permissions-policy')).toContain('camera=(self)');
});

test.each(['/join/x', '/reset/x'])('S21 S30 the secret in %s goes nowhere with the next request', (path) => {
  expect(asked(path, 'GET', {}).headers.get('referrer-policy')).toBe('no-referrer');
  expect(asked(path, 'POST', { origin: 'null' }).status).toBe(403);
});

test('S12 answers of the API are kept nowhere', () => {
  expect(asked('/api/v1/frames/184T', 'GET', {}).headers.get('cache-control')).toBe('private, no-store');
});

test('R7 the readiness answer is 503 while the database is away and 200 when it is back; the health answer is 200', async () => {
  expect((await readyz()).status).toBe(200);
  await besideIt((name) => `ALTER DATABASE "${name}" ALLOW_CONNECTIONS false`);
  await besideIt((name) => `SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '${name}'`);
  expect((await readyz()).status).toBe(503);
  expect(health().status).toBe(200);
  await besideIt((name) => `ALTER DATABASE "${name}" ALLOW_CONNECTIONS true`);
  expect((await readyz()).status).toBe(200);
});
