import { beforeAll, describe, expect, test } from 'vitest';
import { GET as exported } from '@/app/exports/[kind]/route';
import { GET as refused } from '@/app/imports/[id]/refused/route';
import { POST } from '@/app/imports/file/route';
import { db } from '@/lib/db/client';
import { findDialect } from '@/lib/sheet/find-dialect';
import { readRows } from '@/lib/sheet/read-rows';
import { checkedFile } from '../register/import';
import { addSets, plainSet } from '../register/plant';
import { signedIn } from './signed-in';

let planner: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  planner = await signedIn('planner');
});

function sent(
  file: BlobPart | null,
  fields: Record<string, string> = { kind: 'sets' },
  headers: Record<string, string> = {},
) {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  if (file !== null) form.append('file', new File([file], 'list.csv'));
  const request = new Request('http://localhost:3000/imports/file', {
    method: 'POST',
    body: form,
    headers: { cookie: planner.cookie, ...headers },
  });
  return POST(request);
}
const page = { accept: 'text/html' };

describe('a file is sent from a form', () => {
  test('a browser is led to the import, a program is answered in JSON', async () => {
    const led = await sent('Tag,Held by\nF-1,foot\n', undefined, page);
    expect(led.status).toBe(303);
    expect(led.headers.get('location')).toMatch(/^\/imports\/[0-9a-f-]{36}$/);
    const told = await sent('Tag,Held by\nF-1,foot\n');
    expect(told.status).toBe(201);
    const { importId } = await told.json();
    expect((await db.importRun.findFirstOrThrow({ where: { id: importId } })).fileName).toBe('list.csv');
  });

  test('what is no list is led to its import, which says why', async () => {
    const led = await sent(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 1]), undefined, page);
    const id = String(String(led.headers.get('location')).split('/').at(-1));
    const run = await db.importRun.findFirstOrThrow({ where: { id } });
    expect(run).toMatchObject({ status: 'failed', says: expect.stringMatching(/\.$/) });
  });

  test.each([
    ['no file', null, { kind: 'sets' }, 422, 'one'],
    ['no kind', 'Tag\n', {}, 422, 'kind'],
    ['an unknown kind', 'Tag\n', { kind: 'pumps' }, 422, 'kind'],
    ['a stray field', 'Tag\n', { kind: 'sets', colour: 'red' }, 422, 'kind'],
  ] as const)('S1 %s is refused', async (_what, file, fields, status, word) => {
    expect((await sent(file, fields)).status).toBe(status);
    expect((await sent(file, fields, page)).headers.get('location')).toBe(`/imports?said=${word}`);
  });

  test('S6 S15 more than 25 MB is 413, and what is no form 415', async () => {
    expect((await sent(new Uint8Array(25 * 1024 * 1024 + 10))).status).toBe(413);
    const request = new Request('http://localhost:3000/imports/file', {
      ...{ method: 'POST', body: 'Tag\n' },
      headers: { cookie: planner.cookie, 'content-type': 'text/csv' },
    });
    expect((await POST(request)).status).toBe(415);
  });

  test('S25 nobody and a technician are refused before anything is read', async () => {
    expect((await sent('Tag\n', undefined, { cookie: '' })).status).toBe(401);
    expect((await sent('Tag\n', undefined, { cookie: (await signedIn('technician')).cookie })).status).toBe(403);
  });
});

describe('files go out', () => {
  const bytes = async (answer: Response) => new Uint8Array(await answer.arrayBuffer());
  const rows = async (answer: Response) => {
    const all = await bytes(answer);
    const cells: string[][] = [];
    for await (const row of readRows(all, await findDialect(all))) cells.push(row.cells);
    return cells;
  };
  const ask = (path: string, cookie = planner.cookie) =>
    exported(new Request(`http://localhost:3000${path}`, { headers: { cookie } }), {
      params: Promise.resolve({ kind: path.split('?')[0]?.split('/').at(-1) ?? '' }),
    });

  test('S4 a list goes out to be saved, never shown, with its formulas made harmless and its figures as they are', async () => {
    await addSets(planner.actor, plainSet('X-1', { service: '=HYPERLINK("x")', note: '-5 °C at night' }));
    for (const format of ['csv', 'xlsx']) {
      const answer = await ask(`/exports/sets?format=${format}&q=X-1`);
      expect(answer.headers.get('content-disposition')).toMatch(
        new RegExp(`^attachment; filename="sets-\\d{4}-\\d\\d-\\d\\d\\.${format}"$`),
      );
      expect(answer.headers.get('cache-control')).toBe('private, no-store');
      const [head, row] = await rows(answer);
      const cell = (name: string) => row?.[head?.findIndex((one) => one.startsWith(name)) ?? -1];
      expect(cell('Service')).toBe(format === 'csv' ? `'=HYPERLINK("x")` : '=HYPERLINK("x")');
      expect(cell('Tag')).toBe('X-1');
    }
    expect((await ask('/exports/pumps')).status).toBe(404);
    expect((await ask('/exports/sets?format=pdf')).status).toBe(422);
  });

  test('S26 refused rows are for their own site', async () => {
    const runId = await checkedFile(planner.actor, 'sets', 'Tag,Held by\nR-1,hanging\n');
    const of = (cookie: string) =>
      refused(new Request(`http://localhost:3000/imports/${runId}/refused`, { headers: { cookie } }), {
        params: Promise.resolve({ id: runId }),
      });
    const [head, row] = await rows(await of(planner.cookie));
    expect(head).toEqual(['Tag', 'Held by', 'Line', 'Why not']);
    expect(row?.slice(0, 3)).toEqual(['R-1', 'hanging', '2']);
    expect((await of((await signedIn('planner')).cookie)).status).toBe(404);
    expect((await of((await signedIn('technician')).cookie)).status).toBe(403);
  });
});
