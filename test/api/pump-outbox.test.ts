import { randomUUID } from 'node:crypto';
import { beforeEach, expect, test } from 'vitest';
import { POST } from '@/app/pump/outbox/route';
import { db } from '@/lib/db/client';
import type { OutboxMessage } from '@/lib/offline/outbox';
import { makeToken } from '@/lib/register/commands/make-token';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { jpeg } from '../picture/made';
import { addMotors, addSets, got, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';

let person: Awaited<ReturnType<typeof signedIn>>;
let ids: { setId: string; motorOutId: string; motorInId: string };
beforeEach(async () => {
  person = await signedIn('technician');
  const planner = { ...person.actor, role: 'planner' as const };
  const { shelves } = await registerPlaces(planner, { areas: [], stores: [{ name: 'Main', shelves: ['A1'] }] });
  const setId = got(await addSets(planner, plainSet('P-101')), 'P-101');
  const motors = await addMotors(
    planner,
    { motor: plate('M-1'), at: { place: 'in-set', setId } },
    { motor: plate('M-7'), at: { place: 'on-shelf', shelfId: got(shelves, 'Main / A1') } },
  );
  ids = { setId, motorOutId: got(motors, 'M-1'), motorInId: got(motors, 'M-7') };
});

const message = (more: object = {}) => {
  const told: OutboxMessage<'swap'> = {
    ...{ version: 2, kind: 'swap', key: randomUUID(), userId: person.actor.userId, siteId: person.actor.siteId },
    body: {
      ...{
        ...ids,
        fromSetId: null,
        outTo: { place: 'at-repair' },
        why: 'Bearing',
        note: null,
        workDone: [],
        checks: [],
      },
      ...{ insulationMohm: null, overloadA: null, shimsPresentMm: null, doneAt: null },
      readings: null,
      judged: { verdict: 'straight-swap', hours: 1, at: '2026-11-28T03:04:00Z' },
    },
  };
  return { ...told, ...more };
};

const JSON_TYPE = { 'content-type': 'application/json' };
async function send(body: unknown, headers: Record<string, string> = { cookie: person.cookie, ...JSON_TYPE }) {
  const answer = await POST(
    new Request('http://localhost:3000/pump/outbox', {
      method: 'POST',
      headers,
      body: typeof body === 'string' ? body : JSON.stringify(body),
    }),
  );
  return { status: answer.status, headers: answer.headers, body: await answer.json() };
}
const swaps = () => db.swap.count({ where: { siteId: person.actor.siteId } });

test('R2 S12 a message is answered 200 with what it became, again when it comes again, and no one keeps the answer', async () => {
  const told = message();
  const first = await send(told);
  expect(first).toMatchObject({ status: 200, body: { outcome: 'saved', isRepeat: false } });
  expect(first.headers.get('cache-control')).toBe('private, no-store');
  expect((await send(told)).body).toEqual({ ...first.body, isRepeat: true });
  expect(await swaps()).toBe(1);
});

test('R12 yesterday’s program sends the version before; one that is not known is refused', async () => {
  const { judged: _judged, readings: _readings, ...body } = message().body;
  for (const version of [0, 3, '2', null])
    expect(await send(message({ version }))).toMatchObject({
      status: 422,
      body: { outcome: 'refused', problems: [{ path: 'version' }] },
    });
  expect(await send(message({ version: 1, body }))).toMatchObject({ status: 200, body: { outcome: 'saved' } });
});

test('R4 who comes second is answered 409 with who was first, when, and where it stands', async () => {
  expect((await send(message())).status).toBe(200);
  const late = await send(message());
  expect(late).toMatchObject({
    status: 409,
    body: { outcome: 'taken', by: 'Ida Fenn', setTag: 'P-101', motorNumber: 'M-7' },
  });
  expect(Number.isNaN(Date.parse(late.body.at))).toBe(false);
});

test('S1 what is not understood is told with its place', async () => {
  const more = { hurry: true, kind: 'swop', key: 'x' };
  const { status, body } = await send(message(more));
  expect([status, body.outcome]).toEqual([422, 'refused']);
  expect(body.problems.map(({ path }: { path: string }) => path).sort()).toEqual(['hurry', 'key', 'kind']);
  for (const wrong of [null, [], 'text', {}, { ...message(), body: null }, { ...message(), body: [] }])
    expect((await send(wrong)).status).toBe(wrong === 'text' ? 400 : 422);
  expect(await swaps()).toBe(0);
});

test('S6 what is too large, of another type or no text is refused', async () => {
  const { cookie } = person;
  expect((await send(message(), { cookie, 'content-type': 'text/plain' })).status).toBe(415);
  expect((await send(message(), { cookie })).status).toBe(415);
  const large = message();
  expect((await send({ ...large, body: { ...large.body, note: 'x'.repeat(1024 * 1024) } })).status).toBe(413);
  expect(await swaps()).toBe(0);
});

test('nothing of one person is sent as another, nor to another site', async () => {
  const other = await signedIn('technician');
  for (const [told, cookie] of [
    [message(), other.cookie],
    [message({ userId: other.actor.userId }), person.cookie],
    [message({ siteId: other.actor.siteId }), person.cookie],
    [message({ userId: other.actor.userId }), other.cookie],
  ] as const)
    expect(await send(told, { cookie, ...JSON_TYPE })).toMatchObject({ status: 403, body: { outcome: 'not-theirs' } });
  expect(await swaps()).toBe(0);
});

test('S26 signed for one’s own site, another site’s set is not there', async () => {
  const other = await signedIn('technician');
  const { userId, siteId } = other.actor;
  expect(await send(message({ userId, siteId }), { cookie: other.cookie, ...JSON_TYPE })).toMatchObject({
    status: 422,
    body: { outcome: 'refused', problems: [{ path: 'body.setId' }] },
  });
  expect(await swaps()).toBe(0);
});

test('who is not signed in is told so, and a token sends nothing', async () => {
  expect(await send(message(), JSON_TYPE)).toMatchObject({ status: 401, body: { outcome: 'signed-out' } });
  const made = await makeToken(
    { ...person.actor, role: 'administrator' },
    { name: 'Historian', scopes: ['write'], days: 30 },
  );
  if (made.outcome !== 'saved') throw new Error(made.outcome);
  const refused = await send(message(), { authorization: `Bearer ${made.secret}`, ...JSON_TYPE });
  expect([refused.status, refused.body.outcome]).toEqual([403, undefined]);
  expect(await swaps()).toBe(0);
});

test('a photograph of a fault told at the pump is kept once, with the fault, and of this site only', async () => {
  const { userId, siteId } = person.actor;
  const key = randomUUID();
  const at = { version: 2, userId, siteId };
  const fault = { ...at, kind: 'fault', key, body: { setId: ids.setId, seen: ['smell'], says: null, seenAt: null } };
  const base64 = Buffer.from(await jpeg()).toString('base64');
  const picture = { ...at, kind: 'picture', key: randomUUID(), body: { faultKey: key, caption: null, base64 } };
  expect(await send(picture)).toMatchObject({ status: 422, body: { problems: [{ path: 'body.faultKey' }] } });
  expect((await send(fault)).status).toBe(200);
  for (const isRepeat of [false, true])
    expect(await send(picture)).toMatchObject({ status: 200, body: { outcome: 'saved', isRepeat } });
  const kept = await db.attachment.findMany({
    where: { siteId },
    select: { setId: true, fault: { select: { key: true } } },
  });
  expect(kept).toEqual([{ setId: ids.setId, fault: { key } }]);
  const drawing = { ...picture.body, base64: Buffer.from('<svg onload="alert(1)"/>').toString('base64') };
  expect((await send({ ...picture, body: drawing })).status).toBe(422);
  const other = await signedIn('technician');
  const there = { ...picture, userId: other.actor.userId, siteId: other.actor.siteId };
  expect(await send(there, { cookie: other.cookie, ...JSON_TYPE })).toMatchObject({ status: 422 });
});
