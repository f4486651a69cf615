import { NextRequest } from 'next/server';
import sharp from 'sharp';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { GET } from '@/app/pictures/[id]/route';
import { POST } from '@/app/pictures/route';
import { db } from '@/lib/db/client';
import { makeToken } from '@/lib/register/commands/make-token';
import { proxy } from '@/proxy';
import { jpeg } from '../picture/made';
import { addMotors, addSets, got, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';

let person: Awaited<ReturnType<typeof signedIn>>;
let motorId: string;
let setId: string;
let seed = 100;
beforeAll(async () => {
  person = await signedIn('technician');
  const planner = { ...person.actor, role: 'planner' as const };
  setId = got(await addSets(planner, plainSet('P-101')), 'P-101');
  motorId = got(await addMotors(planner, { motor: plate('M-1'), at: { place: 'in-set', setId } }), 'M-1');
});

const large = async () => new File([await jpeg({ widthPx: 800, heightPx: 600, seed })], 'plate.jpg');

let picture: File;
beforeEach(async () => {
  seed += 1;
  const bytes = await jpeg({ widthPx: 64, heightPx: 48, seed });
  picture = new File([bytes], 'plate.jpg', { type: 'image/jpeg' });
});

type Fields = Record<string, string | Blob | (string | Blob)[]>;

function formOf(fields: Fields): FormData {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of [values].flat()) form.append(name, value);
  return form;
}

const sent = (body: BodyInit | null, headers: Record<string, string> = {}, more: object = {}) =>
  POST(
    new Request('http://localhost:3000/pictures', {
      method: 'POST',
      headers: { cookie: person.cookie, ...headers },
      body,
      ...more,
    }),
  );

const asked = (id: string, headers: Record<string, string> = { cookie: person.cookie }) =>
  GET(new Request(`http://localhost:3000/pictures/${id}`, { headers }), { params: Promise.resolve({ id }) });

const PAGE = { accept: 'text/html,application/xhtml+xml' };
const kept = () => db.attachment.count();

describe('a form with a photograph is answered', () => {
  test('in JSON to who asks for no page: 201 with its address, then 200 for the same', async () => {
    const first = await sent(formOf({ motorId, picture, caption: 'Plate' }));
    expect(first.status).toBe(201);
    const { pictureId } = await first.json();
    expect(first.headers.get('location')).toBe(`/pictures/${pictureId}`);
    expect(first.headers.get('cache-control')).toBe('private, no-store');
    expect(await db.attachment.findFirst({ where: { id: pictureId } })).toMatchObject({
      siteId: person.actor.siteId,
      motorId,
      caption: 'Plate',
      byId: person.actor.userId,
    });
    const again = await sent(formOf({ motorId, picture }));
    expect([again.status, (await again.json()).pictureId]).toEqual([200, pictureId]);
  });

  test('without script by a way back to the page, which says what came of it; an empty place to choose is no picture', async () => {
    const empty = new File([], '');
    const form = { setId, caption: '', to: '/sets/P-101?from=home', picture: [empty, picture] };
    const answer = await sent(formOf(form), PAGE);
    expect([answer.status, answer.headers.get('location')]).toEqual([
      303,
      '/sets/P-101?from=home&picture=kept#photographs',
    ]);
    expect((await sent(formOf(form), PAGE)).headers.get('location')).toMatch(/picture=same#photographs$/);
  });

  test('S11 the way back is a path of this site', async () => {
    for (const to of [
      '//elsewhere.example/',
      'https://elsewhere.example/',
      '/\\elsewhere.example',
      'javascript:alert(1)',
    ])
      expect((await sent(formOf({ setId, picture, to }), PAGE)).headers.get('location'), to).toMatch(
        /^\/\?picture=(kept|same)#photographs$/,
      );
  });

  test.each([
    [
      'S16 an SVG called plate.jpg',
      () => new File(['<svg onload="alert(1)"/>'], 'plate.jpg', { type: 'image/jpeg' }),
      'drawing',
    ],
    [
      'S16 HTML called plate.png',
      () => new File(['<!doctype html><script>'], 'plate.png', { type: 'image/png' }),
      'drawing',
    ],
    ['half a JPEG', async () => new File([(await jpeg()).subarray(0, 9_000)], 'p.jpg'), 'broken'],
    ['nothing chosen', () => new File([], ''), 'empty'],
  ] as const)('%s is refused either way and not kept', async (_name, make, why) => {
    const before = await kept();
    const file = await make();
    const answer = await sent(formOf({ motorId, picture: file }));
    expect([answer.status, answer.headers.get('content-type')]).toEqual([422, 'application/problem+json']);
    expect((await answer.json()).title).toMatch(/^\p{Lu}.+\.$/u);
    const page = await sent(formOf({ motorId, picture: file, to: '/motors/M-1' }), PAGE);
    expect(page.headers.get('location')).toBe(`/motors/M-1?picture=${why}#photographs`);
    expect(await kept()).toBe(before);
  });

  test('two pictures at once are refused', async () => {
    const before = await kept();
    expect((await sent(formOf({ motorId, picture: [picture, picture] }))).status).toBe(422);
    expect(await kept()).toBe(before);
  });
});

describe('S1 what does not belong to the form is refused, by name', () => {
  test.each<[string, (file: File) => Fields, string]>([
    ['an unknown key', (file) => ({ motorId: 'x', picture: file, wings: '2' }), 'wings'],
    ['a set and a motor', (file) => ({ motorId: 'x', setId: 'y', picture: file }), '(whole)'],
    ['neither', (file) => ({ picture: file }), '(whole)'],
    ['a key twice', (file) => ({ motorId: ['x', 'y'], picture: file }), 'motorId'],
    ['words in place of the picture', () => ({ motorId: 'x', picture: 'words' }), 'picture'],
    ['a file in place of words', (file) => ({ motorId: file, picture: file }), 'motorId'],
  ])('%s', async (_name, fields, path) => {
    const answer = await sent(formOf(fields(picture)));
    expect(answer.status).toBe(422);
    expect((await answer.json()).problems.map((one: { path: string }) => one.path)).toContain(path);
  });

  test('S15 a form of a thousand fields is not taken apart', async () => {
    const many = formOf({ motorId, picture });
    for (let at = 0; at < 1_000; at += 1) many.append(`field${at}`, 'x');
    const answer = await sent(many);
    expect(answer.status).toBe(422);
    expect((await answer.json()).title).toContain('too many fields');
  });

  test('a form that does not arrive whole is a bad request', async () => {
    const type = 'multipart/form-data; boundary=x';
    for (const body of ['', '--x\r\n', '--x\r\ncontent-disposition: form-data; name="motorId"\r\n\r\n1', 'words'])
      expect((await sent(body, { 'content-type': type })).status, body).toBe(400);
  });
});

describe('S6 what is no form of at most 15 MB is refused', () => {
  test.each([
    'application/json',
    'image/jpeg',
    'application/x-www-form-urlencoded',
    'multipart/form-data',
    'text/plain',
  ])('%s is 415', async (type) => {
    const answer = await sent('{}', { 'content-type': type });
    expect([answer.status, answer.headers.get('content-type')]).toEqual([415, 'application/problem+json']);
    const page = await sent('{}', { 'content-type': type, ...PAGE });
    expect([page.status, page.headers.get('content-type')]).toEqual([415, 'text/plain; charset=utf-8']);
    expect(await page.text()).toContain('was not kept');
  });

  test('a larger one is 413, whatever length it claims', async () => {
    const before = await kept();
    const large = new File([await picture.arrayBuffer(), new Uint8Array(15 * 1024 * 1024)], 'p.jpg');
    expect((await sent(formOf({ motorId, picture: large }))).status).toBe(413);
    expect((await sent(formOf({ motorId, picture: large }), { 'content-length': '10' })).status).toBe(413);
    expect((await sent(formOf({ motorId, picture: large }), PAGE)).status).toBe(413);
    expect(await kept()).toBe(before);
  });

  test('one that claims to be larger is not read at all, an endless one not to its end', async () => {
    let told = 0;
    const endless = () =>
      new ReadableStream(
        {
          pull(controller) {
            told += 1;
            controller.enqueue(new Uint8Array(65_536));
          },
        },
        { highWaterMark: 0 },
      );
    const type = { 'content-type': 'multipart/form-data; boundary=x' };
    expect((await sent(endless(), { ...type, 'content-length': '16000000' }, { duplex: 'half' })).status).toBe(413);
    expect(told).toBe(0);
    expect((await sent(endless(), type, { duplex: 'half' })).status).toBe(413);
    expect(told).toBeLessThan(250);
  });
});

describe('S25 who may', () => {
  test('nobody keeps anything, and is told so', async () => {
    const before = await kept();
    for (const cookie of ['', 'bedplate.session_token=made-up.signature']) {
      const answer = await sent(formOf({ motorId, picture }), { cookie });
      expect([answer.status, answer.headers.get('content-type')]).toEqual([401, 'application/problem+json']);
      const page = await sent(formOf({ motorId, picture }), { cookie, ...PAGE });
      expect(page.status).toBe(401);
      expect(await page.text()).toMatch(/was not kept\. You are no longer signed in/);
    }
    expect(await kept()).toBe(before);
  });

  test('a token that may only read fetches a picture and keeps none', async () => {
    const { pictureId } = await (await sent(formOf({ motorId, picture }))).json();
    const made = await makeToken(
      { ...person.actor, role: 'administrator' },
      { name: 'Wall', scopes: ['read'], days: 1 },
    );
    if (made.outcome !== 'saved') throw new Error(made.outcome);
    const headers = { authorization: `Bearer ${made.secret}` };
    expect((await asked(pictureId, headers)).status).toBe(200);
    expect((await sent(formOf({ motorId, picture }), { cookie: '', ...headers })).status).toBe(403);
  });

  test('S26 a motor of another site is not known', async () => {
    const before = await kept();
    const stranger = await signedIn('administrator');
    const answer = await sent(formOf({ motorId, picture }), { cookie: stranger.cookie });
    expect(answer.status).toBe(422);
    const none = { motorId: crypto.randomUUID(), picture };
    expect(await answer.json()).toEqual(await (await sent(formOf(none), { cookie: stranger.cookie })).json());
    expect(await kept()).toBe(before);
  });
});

describe('a photograph at its address', () => {
  test('S16 S12 has its own type and a sandbox, and is kept nowhere', async () => {
    const { pictureId } = await (await sent(formOf({ motorId, picture }))).json();
    expect(pictureId).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4/);
    const answer = await asked(pictureId);
    expect(answer.status).toBe(200);
    expect(Object.fromEntries(answer.headers)).toEqual({
      'content-type': 'image/webp',
      'content-disposition': `inline; filename="${pictureId}.webp"`,
      'content-security-policy': "sandbox; default-src 'none'",
      'x-content-type-options': 'nosniff',
      'cross-origin-resource-policy': 'same-origin',
      'cache-control': 'private, no-store',
    });
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(bytes.subarray(0, 4).toString()).toBe('RIFF');
    expect(bytes.equals(Buffer.from(await picture.arrayBuffer()))).toBe(false);
  });

  test('S16 is answered small for a list, as guarded, and anything else asked of it is refused', async () => {
    const { pictureId } = await (await sent(formOf({ motorId, picture: await large() }))).json();
    const ask = (query: string) =>
      GET(new Request(`http://localhost:3000/pictures/${pictureId}${query}`, { headers: { cookie: person.cookie } }), {
        params: Promise.resolve({ id: pictureId }),
      });
    const [whole, little] = await Promise.all([ask(''), ask('?size=small')]);
    expect(Object.fromEntries(little.headers)).toEqual(Object.fromEntries(whole.headers));
    const bytes = Buffer.from(await little.arrayBuffer());
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'webp', width: 240, height: 180 });
    expect(bytes.length).toBeLessThan((await whole.arrayBuffer()).byteLength / 4);
    for (const query of ['?size=html', '?size=small&size=small', '?as=text/html'])
      expect((await ask(query)).status, query).toBe(422);
  });

  test('S16 the proxy, whose word stands, gives a picture that sandbox too, and a page its nonce', () => {
    const policyOf = (path: string) =>
      proxy(new NextRequest(`http://localhost:3000${path}`)).headers.get('content-security-policy');
    expect(policyOf(`/pictures/${crypto.randomUUID()}`)).toBe("sandbox; default-src 'none'");
    for (const path of ['/pictures', '/pictures/x/y', '/motors/pictures/x', '/motors/M-1'])
      expect(policyOf(path), path).toContain("'nonce-");
  });

  test('S26 of another site, unknown, retired or no address at all is one and the same answer', async () => {
    const { pictureId } = await (await sent(formOf({ motorId, picture }))).json();
    const stranger = await signedIn('administrator');
    const theirs = await asked(pictureId, { cookie: stranger.cookie });
    expect([theirs.status, theirs.headers.get('cache-control')]).toEqual([404, 'private, no-store']);
    const told = await theirs.text();
    for (const id of [crypto.randomUUID(), 'x', '../../etc/passwd', "' OR 1=1 --", pictureId.toUpperCase()]) {
      const answer = await asked(id);
      expect([answer.status, await answer.text()], id).toEqual([404, told]);
    }
    await db.attachment.updateMany({ where: { id: pictureId }, data: { retiredAt: new Date() } });
    expect((await asked(pictureId)).status).toBe(404);
  });

  test('S25 nobody is told nothing, whether there is one or not', async () => {
    const { pictureId } = await (await sent(formOf({ motorId, picture }))).json();
    for (const id of [pictureId, crypto.randomUUID()]) expect((await asked(id, {})).status).toBe(401);
  });
});
