import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import type { Role } from '@/lib/auth/may';
import { runningUrl } from '../../scripts/pg.mjs';
import { ACTION_DOORS, type ActionDoor } from '../walk/actions';
import { PAGE_DOORS } from '../walk/pages';
import { ROUTE_DOORS } from '../walk/routes';
import { Site } from '../walk/site';
import { demoPassword } from './demo-password';

/** The first plant's and the second's people, and nobody. */
const ROLES = ['technician', 'planner', 'reliability', 'administrator'] as const;
interface Caller {
  role: Role | null;
  isHere: boolean;
  cookie: string;
}

const callers: Caller[] = [];
let site: Site;
let base: string;
const as = (role: Role | null, isHere = true): Caller =>
  callers.find((one) => one.role === role && (one.isHere === isHere || role === null)) as Caller;

test.describe.configure({ mode: 'serial' });

test.beforeAll(async ({ baseURL }) => {
  test.setTimeout(180_000);
  base = String(baseURL);
  callers.push({ role: null, isHere: true, cookie: '' });
  for (const [isHere, at] of [
    [true, 'example.com'],
    [false, 'saltgarth.example.com'],
  ] as const)
    for (const role of ROLES) callers.push({ role, isHere, cookie: await signedIn(`${role}@${at}`) });
  const url = runningUrl(path.resolve('.data/browser-test/pg'));
  if (url === null) throw new Error('the database of the tests is not there');
  site = await Site.of(url, 'OR-115', async (path) => (await get(as('administrator'), path)).text());
  const html = await (await get(as('technician'), '/sets/OR-115/candidates?from=buy')).text();
  site.set('rating', decodeURIComponent(/\/sets\/OR-115\/candidates\/([^"?]+)"/.exec(html)?.[1] ?? ''));
});
test.afterAll(() => site?.end());

test('S25 S26 every page opens to whom it may, and to nobody else', async () => {
  test.setTimeout(240_000);
  const wrong: string[] = [];
  for (const { page, at, may, isOfOne } of PAGE_DOORS) {
    const path = site.filled(at);
    for (const caller of callers) {
      const answer = await get(caller, path);
      const isOpen = may === 'anybody';
      const allowed = isOpen || (caller.role !== null && may.includes(caller.role));
      const expected =
        caller.role === null && !isOpen
          ? 307
          : !allowed
            ? 403
            : isOfOne && !caller.isHere
              ? 404
              : page.includes('[token]')
                ? 404
                : 200;
      const text = await answer.text();
      if (answer.status !== expected) wrong.push(`${nameOf(caller)} ${path}: ${answer.status}, not ${expected}`);
      if (caller.role === null && !isOpen && !(answer.headers.get('location') ?? '').includes('/sign-in'))
        wrong.push(`nobody ${path}: not led to the sign-in`);
      // Nothing of the first site stands on any page of the second's people, whatever its address asks for.
      if (!caller.isHere && caller.role !== null && text.includes(site.value('mark')))
        wrong.push(`${nameOf(caller)} ${path}: shows a set of the other site`);
    }
  }
  expect(wrong).toEqual([]);
});

test('S25 S26 every route answers whom it may, and nobody else', async () => {
  test.setTimeout(240_000);
  const wrong: string[] = [];
  const before = await site.sum();
  for (const { route, at, may, body, type, elsewhere } of ROUTE_DOORS) {
    if (may === 'anybody') continue; // proven in the tests of sign-in, headers and readiness
    const [method = ''] = route.split(' ');
    for (const caller of callers) {
      const allowed = caller.role !== null && may.includes(caller.role);
      if (allowed && caller.isHere && method !== 'GET') continue; // what they change is proven in the tests of the API
      const answer = await ask(caller, method, site.filled(at), body, type);
      const refusal = caller.role === null ? 401 : allowed ? null : 403;
      const expected = refusal ?? (caller.isHere ? null : (elsewhere ?? null));
      const isRight =
        expected === null ? answer.status < 500 && ![401, 403].includes(answer.status) : answer.status === expected;
      if (!isRight) wrong.push(`${nameOf(caller)} ${route}: ${answer.status}, not ${expected ?? 'an answer'}`);
      const text = await answer.text();
      if (!caller.isHere && caller.role !== null && text.includes(site.value('mark')))
        wrong.push(`${nameOf(caller)} ${route}: tells a set of the other site`);
    }
  }
  expect(wrong).toEqual([]);
  const ignored = /^(audit_entry|import_run) /;
  const kept = (sum: string) => sum.split('\n').filter((line) => !ignored.test(line));
  expect(kept(await site.sum())).toEqual(kept(before));
});

test('S25 S26 S27 every action does nothing for whom it may not, and something for whom it may', async () => {
  test.setTimeout(600_000);
  const wrong: string[] = [];
  const ids = actionIds();
  const other = await site.otherSite();
  for (const door of ACTION_DOORS) {
    const id = ids.get(door.action);
    if (id === undefined) {
      wrong.push(`${door.action} is not in the build`);
      continue;
    }
    const fields = await door.fields(site);
    const { may } = door;
    const refused = callers.filter(
      ({ role, isHere }) => role === null || !isHere || (may !== 'anybody' && !may.includes(role)),
    );
    for (const caller of refused) {
      const before = await site.sum();
      const elsewhere = caller.role === null ? await site.sum(other) : null;
      const answer = await act(caller, door, id, fields);
      if (answer.status === 404) wrong.push(`${door.action}: not found at ${door.at}`);
      if ((await site.sum()) !== before) wrong.push(`${nameOf(caller)} ${door.action}: changed the first site`);
      if (elsewhere !== null && (await site.sum(other)) !== elsewhere)
        wrong.push(`${nameOf(caller)} ${door.action}: changed the second site`);
    }
    if (door.provenIn !== undefined || may === 'anybody') continue;
    const before = await site.sum();
    const by = as(door.by ?? (may.at(-1) as Role));
    const answer = await act(by, door, id, fields);
    if ((await site.sum()) === before)
      wrong.push(
        `${nameOf(by)} ${door.action}: did nothing (${answer.status}): ${(await answer.text()).slice(0, 300)}`,
      );
    await site.atRest();
  }
  expect(wrong).toEqual([]);
});

const nameOf = ({ role, isHere }: Caller) =>
  role === null ? 'nobody' : `${role}${isHere ? '' : ' of the other site'}`;

const get = (caller: Caller, path: string) =>
  fetch(`${base}${path}`, { redirect: 'manual', headers: { cookie: caller.cookie, accept: 'text/html' } });

function ask(caller: Caller, method: string, path: string, body: unknown, type: string | undefined) {
  const text = typeof body === 'string' ? body : site.filledBody(body);
  return fetch(`${base}${path}`, {
    ...{ method, redirect: 'manual' },
    headers: {
      ...{ cookie: caller.cookie, origin: base },
      ...(type !== undefined && { 'content-type': type }),
      ...(method === 'PATCH' && { 'if-match': '"1"' }),
      ...(path.endsWith('/swaps') && { 'idempotency-key': crypto.randomUUID() }),
    },
    ...(body !== undefined && { body: text }),
  });
}

/** As the page's own script sends it: the action by its id, its arguments as React writes them. */
function act(caller: Caller, { at, isAsked }: ActionDoor, id: string, fields: Record<string, string>) {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(`_1_${name}`, value);
  form.append('0', isAsked ? '[{"outcome":"asked"},"$K1"]' : '["$K1"]');
  const path = site.filled(at);
  return fetch(`${base}${path}`, {
    ...{ method: 'POST', redirect: 'manual', body: form },
    headers: {
      cookie: caller.cookie,
      origin: base,
      referer: `${base}${path}`,
      'next-action': id,
      accept: 'text/x-component',
    },
  });
}

/** The build's own list of actions, by file and name. */
function actionIds(): Map<string, string> {
  const { node } = JSON.parse(fs.readFileSync('.next/server/server-reference-manifest.json', 'utf8'));
  return new Map(
    Object.entries(node as Record<string, { filename: string; exportedName: string }>).map(
      ([id, { filename, exportedName }]) => [`${filename} ${exportedName}`, id],
    ),
  );
}

/** Signing in is limited to a few tries in ten seconds from one address. */
async function signedIn(email: string): Promise<string> {
  for (let tries = 0; tries < 20; tries += 1) {
    const answer = await fetch(`${base}/api/auth/sign-in/email`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: base },
      body: JSON.stringify({ email, password: demoPassword }),
    });
    if (answer.ok)
      return answer.headers
        .getSetCookie()
        .map((cookie) => cookie.split(';')[0])
        .join('; ');
    await new Promise((resolve) => setTimeout(resolve, 3_000));
  }
  throw new Error(`${email} could not sign in`);
}
