import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { beforeAll, expect, test } from 'vitest';
import { GET } from '@/app/api/v1/frames/[frame]/route';
import { signedIn } from './signed-in';

let cookie: string;
beforeAll(async () => {
  ({ cookie } = await signedIn('technician'));
});

const asked = (frame: string, query = '', headers: Record<string, string> = { cookie }) =>
  GET(new Request(`http://localhost:3000/api/v1/frames/${encodeURIComponent(frame)}${query}`, { headers }), {
    params: Promise.resolve({ frame: encodeURIComponent(frame) }),
  });

test.each([
  ['184TC', '', ['184TC']],
  ['112M', '?mounting=IM%20B35', ['112M', 'IM B35']],
  ['182/4T', '', ['182/4T']],
  ['225M', '?poles=2', ['225M', '--poles', '2']],
  ['FF165', '', ['FF165']],
])('%s%s is answered as the command answers', async (frame, query, args) => {
  const answer = await asked(frame, query);
  expect(answer.status).toBe(200);
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', 'scripts/frame.ts', ...args]);
  expect(await answer.json()).toEqual(JSON.parse(stdout));
});

test('the mounting of 184T is that of MG 1-4.4.1: D 4.50 in, 2E 7.50 in, 2F 5.50 in, U 1 1/8 in', async () => {
  const { dimensions, system } = await (await asked('184T')).json();
  expect(system).toBe('NEMA');
  expect(dimensions.shaftHeightMm.value).toBeCloseTo(4.5 * 25.4, 6);
  expect(dimensions.holesAcrossMm.value).toBeCloseTo(7.5 * 25.4, 6);
  expect(dimensions.holesAlongMm.value).toBeCloseTo(5.5 * 25.4, 6);
  expect(dimensions.shaftDiameterMm.value).toBeCloseTo(1.125 * 25.4, 6);
});

test.each([
  ['a word', 'hello', '', 404, 'frame'],
  ['nothing', ' ', '', 404, 'frame'],
  ['a text of a mile', '9'.repeat(5_000), '', 404, 'frame'],
  ['poles that are odd', '225M', '?poles=3', 422, 'poles'],
  ['poles that are no number', '225M', '?poles=two', 422, 'poles'],
  ['poles left empty', '225M', '?poles=', 422, 'poles'],
  ['a mounting not understood', '112M', '?mounting=hanging', 422, 'mounting'],
  ['S1 an unknown key', '112M', '?colour=blue', 422, 'colour'],
  ['a key twice', '225M', '?poles=2&poles=4', 422, 'poles'],
  ['another system', '56', '?system=JIS', 422, 'system'],
])('%s is refused with its path', async (_name, frame, query, status, path) => {
  const answer = await asked(frame, query);
  expect([answer.status, answer.headers.get('content-type')]).toEqual([status, 'application/problem+json']);
  const { problems } = await answer.json();
  expect(problems).toContainEqual(expect.objectContaining({ path, says: expect.stringMatching(/\S/) }));
});

test('S25 nobody is answered 401', async () => {
  expect((await asked('184T', '', {})).status).toBe(401);
});
