import path from 'node:path';
import { expect, test } from '@playwright/test';
import { SIGNED_OUT } from '@/app/signed-out';
import { ROLES, type Role } from '@/lib/auth/may';
import { SCOPES } from '@/lib/auth/scopes';
import { runningUrl } from '../../scripts/pg.mjs';
import { jpeg } from '../picture/made';
import { ACTION_DOORS, type ActionDoor } from '../walk/actions';
import { act, actionIds, askRoute, type Caller, getPage, NOBODY, signedIn } from '../walk/callers';
import { PAGE_DOORS } from '../walk/pages';
import { QUESTIONS } from '../walk/questions';
import { ROUTE_DOORS } from '../walk/routes';
import { Site } from '../walk/site';
import { demoPassword } from './demo-password';

/** Nobody, the first plant's people and the second's. */
const callers: Caller[] = [NOBODY];
let site: Site;
let base: string;
const as = (role: Role): Caller => callers.find((one) => one.role === role && one.isHere) ?? NOBODY;
const strangers = () => callers.filter(({ isHere }) => !isHere);

test.describe.configure({ mode: 'default' }); // one after the other, since they hold sums against each other

test.beforeAll(async ({ baseURL }) => {
  base = String(baseURL);
  for (const [isHere, at] of [
    [true, 'example.com'],
    [false, 'saltgarth.example.com'],
  ] as const)
    for (const role of ROLES)
      callers.push(await signedIn(base, { role, isHere, email: `${role}@${at}`, password: demoPassword }));
  const url = runningUrl(path.resolve('.data/browser-test/pg'));
  if (url === null) throw new Error('the database of the tests is not there');
  site = await Site.of(url, 'OR-115', async (at) => (await getPage(base, as('administrator'), at)).text());
  const html = await (await getPage(base, as('technician'), '/sets/OR-115/candidates?from=buy')).text();
  site.set('rating', decodeURIComponent(/\/sets\/OR-115\/candidates\/([^"?]+)"/.exec(html)?.[1] ?? ''));
  const form = new FormData();
  form.append('motorId', site.value('motorId'));
  form.append('picture', new Blob([await jpeg({ seed: 77 })], { type: 'image/jpeg' }), 'plate.jpg');
  const kept = await askRoute(base, as('technician'), 'POST', '/pictures', { body: form });
  const { pictureId, ...more } = await kept.json();
  if (typeof pictureId !== 'string') throw new Error(`no picture was kept: ${JSON.stringify(more)}`);
  site.set('picture', pictureId);
});
test.afterAll(() => site?.end());

/** What stands in an answer of the first site's, but for what its address names anyhow. */
const toldOf = (text: string, asked: string) =>
  site.words.filter((word) => text.includes(word) && !asked.toLowerCase().includes(word.toLowerCase()));

test('S25 S26 every page opens to whom it may, and to nobody else', async () => {
  const wrong: string[] = [];
  for (const { page, at, may, isOfOne, leadsTo } of PAGE_DOORS) {
    const asked = site.filled(at);
    const isOpen = may === 'anybody';
    for (const caller of callers) {
      const { name, role, isHere } = caller;
      const answer = await getPage(base, caller, asked);
      const allowed = isOpen || (role !== null && may.includes(role));
      const isThere = !page.includes('[token]') && (isHere || !isOfOne);
      const shown = leadsTo === undefined ? 200 : 307;
      const expected = role === null && !isOpen ? 307 : !allowed ? 403 : isThere ? shown : 404;
      const text = await answer.text();
      if (answer.status !== expected) wrong.push(`${name} ${asked}: ${answer.status}, not ${expected}`);
      const to = role === null || leadsTo === undefined ? '/sign-in' : site.filled(leadsTo);
      if (expected === 307 && !(answer.headers.get('location') ?? '').includes(to))
        wrong.push(`${name} ${asked}: not led to ${to}`);
      const quiet = role === null || !isHere || expected === 403;
      const script = quiet ? await (await getPage(base, caller, asked, 'script')).text() : '';
      // Whose own name stands in the bar is told that much of the site.
      const told = quiet ? toldOf(text + script, asked).filter((word) => !isHere || word !== site.nameOf(role)) : [];
      if (told.length > 0) wrong.push(`${name} ${asked}: tells ${told.slice(0, 5)}`);
      if (isOfOne && expected === 200 && toldOf(text, '').length === 0)
        wrong.push(`${name} ${asked}: tells nothing of the site, so that its silence elsewhere shows nothing`);
    }
  }
  expect(wrong).toEqual([]);
});

test('S26 however a stranger asks for what the first site has, nothing of it is told', async () => {
  const wrong: string[] = [];
  const told: string[] = [];
  for (const question of QUESTIONS) {
    const asked = site.filled(question);
    const here = await (await getPage(base, as('administrator'), asked)).text();
    if (toldOf(here, '').length > 0) told.push(question);
    for (const caller of strangers()) {
      const answer = await getPage(base, caller, asked);
      const words = toldOf(await answer.text(), asked);
      if (answer.status >= 500 || words.length > 0)
        wrong.push(`${caller.name} ${asked}: ${answer.status} ${words.slice(0, 5)}`);
    }
  }
  expect(wrong).toEqual([]);
  expect(told, 'each tells its own people something').toEqual([...QUESTIONS]);
});

test('S25 S26 every route answers whom it may, and nobody else', async () => {
  const wrong: string[] = [];
  const before = await site.sum();
  for (const { route, at, may, body, type, elsewhere } of ROUTE_DOORS) {
    if (may === 'anybody') continue; // proven in the tests of sign-in, headers and readiness
    const [method = ''] = route.split(' ');
    const asked = site.filled(at);
    for (const caller of callers) {
      const { name, role, isHere } = caller;
      const allowed = role !== null && may.includes(role);
      if (allowed && isHere && method !== 'GET') continue; // what they change is proven in the tests of the API
      const answer = await askRoute(base, caller, method, asked, { body: site.filledBody(body), type });
      const refusal = role === null ? 401 : allowed ? null : 403;
      const expected = refusal ?? (isHere ? null : (elsewhere ?? null));
      const isRight =
        expected === null ? answer.status < 500 && ![401, 403].includes(answer.status) : answer.status === expected;
      if (!isRight) wrong.push(`${name} ${route}: ${answer.status}, not ${expected ?? 'an answer'}`);
      const told = isHere && allowed ? [] : toldOf(await answer.text(), asked);
      if (told.length > 0) wrong.push(`${name} ${route}: tells ${told.slice(0, 5)}`);
    }
  }
  expect(wrong).toEqual([]);
  const ignored = /^(audit_entry|import_run) /;
  const kept = (sum: string) => sum.split('\n').filter((line) => !ignored.test(line));
  expect(kept(await site.sum())).toEqual(kept(before));
});

test('S13 S25 a token passes the doors of its scopes, no others, and no page', async () => {
  const wrong: string[] = [];
  const tokens: (Caller & { scope: string | null })[] = [
    { ...NOBODY, name: 'an unknown token', scope: null, headers: { authorization: `Bearer bp_${'x'.repeat(43)}` } },
  ];
  for (const scope of SCOPES)
    tokens.push({ ...NOBODY, name: `a token to ${scope}`, scope, headers: { authorization: await madeToken(scope) } });
  for (const token of tokens) {
    for (const { route, at, may, body, type, scopes = [] } of ROUTE_DOORS) {
      if (may === 'anybody') continue;
      const [method = ''] = route.split(' ');
      const allowed = scopes.some((scope) => scope === token.scope);
      const changes = method !== 'GET' && !route.endsWith('/assess') && !route.endsWith('/plate');
      if (allowed && changes) continue; // proven in the tests of the API
      const answer = await askRoute(base, token, method, site.filled(at), { body: site.filledBody(body), type });
      const expected = token.scope === null ? 401 : allowed ? 'an answer' : 403;
      const isRight = allowed ? answer.status < 400 || answer.status === 422 : answer.status === expected;
      if (!isRight) wrong.push(`${token.name} ${route}: ${answer.status}, not ${expected}`);
    }
    const page = await getPage(base, token, '/sets');
    if (page.status !== 307) wrong.push(`${token.name} /sets: ${page.status}, not 307`);
  }
  expect(wrong).toEqual([]);
});

async function madeToken(scope: string): Promise<string> {
  const door = ACTION_DOORS.find(({ action }) => action.endsWith(' makeTokenHere')) as ActionDoor;
  const fields = { ...(await door.fields(site)), scopes: scope, ownerId: site.personOf('administrator') };
  const answer = await act(base, site, as('administrator'), door, String(actionIds().get(door.action)), fields);
  const [secret] = /bp_[\w-]{43}/.exec(await answer.text()) ?? [];
  if (secret === undefined) throw new Error('no token was made');
  return `Bearer ${secret}`;
}

test('S25 S26 S27 every action does nothing for whom it may not, and something for each whom it may', async () => {
  const wrong: string[] = [];
  const ids = actionIds();
  const other = await site.otherSite();
  const done = (caller: Caller, door: ActionDoor, fields: Record<string, string>) =>
    act(base, site, caller, door, String(ids.get(door.action)), fields);
  for (const door of ACTION_DOORS) {
    const { action, may } = door;
    if (!ids.has(action)) {
      wrong.push(`${action} is not in the build`);
      continue;
    }
    let fields = await door.fields(site);
    let before = await site.sum();
    for (const caller of callers) {
      const { name, role, isHere } = caller;
      const allowed = may === 'anybody' || (role !== null && may.includes(role));
      if (isHere && allowed) continue;
      const elsewhere = role === null ? await site.sum(other) : null;
      const answer = await done(caller, door, fields);
      const refusal = refusalOf(answer, await answer.text());
      if (role === null && may !== 'anybody' && refusal !== 'sign-in') wrong.push(`${name} ${action}: ${refusal}`);
      if (role !== null && !allowed && refusal !== 'role' && !door.isTheirOwn)
        wrong.push(`${name} ${action}: ${refusal}`);
      if (refusal === 'failed') wrong.push(`${name} ${action}: failed with ${answer.status}`);
      const after = await site.sum();
      if (after !== before) wrong.push(`${name} ${action}: changed the first site`);
      before = after;
      if (elsewhere !== null && (await site.sum(other)) !== elsewhere)
        wrong.push(`${name} ${action}: changed the second site`);
    }
    if (door.provenIn !== undefined || may === 'anybody') continue;
    // The same form, sent by whom it may, does something: it was not refused for what stood in it.
    for (const role of may) {
      const stood = await site.sum();
      const answer = await done(as(role), door, fields);
      if ((await site.sum()) === stood)
        wrong.push(`${role} ${action}: did nothing (${answer.status}): ${(await answer.text()).slice(0, 300)}`);
      await site.atRest();
      if (role !== may.at(-1)) fields = await door.fields(site);
    }
  }
  expect(wrong).toEqual([]);
});

/** How a form was refused, as far as its answer tells. */
function refusalOf(answer: Response, text: string): 'sign-in' | 'role' | 'failed' | 'otherwise' {
  const to = answer.headers.get('x-action-redirect') ?? answer.headers.get('location') ?? '';
  if (to.startsWith('/sign-in') || text.includes('"signed-out"') || text.includes(SIGNED_OUT)) return 'sign-in';
  if (answer.status === 403 || /[?&](said|undone)=role\b/.test(to)) return 'role';
  return answer.status >= 500 || answer.status === 404 ? 'failed' : 'otherwise';
}

test('the audit tells all that was done on the walk in words', async () => {
  const answer = await getPage(base, as('administrator'), '/audit/export');
  const rows = (await answer.text()).split('\r\n').slice(1, -1);
  expect(rows.length).toBeGreaterThan(200);
  // The fifth cell is what was done, the sixth the field.
  const cells = rows.map((row) => row.match(/("([^"]|"")*"|[^",]*)(,|$)/g)?.map((one) => one.replace(/,$/, '')) ?? []);
  const unknown = cells.filter(([, , , , done = '']) => /^[a-z]+\.[a-z-]+$/.test(done));
  expect(unknown).toEqual([]);
  const raw = cells.filter(([, , , , , field = '']) => /[a-z]{2}[A-Z]|\w\.\w/.test(field));
  expect(raw).toEqual([]);
});
