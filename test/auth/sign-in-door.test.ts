import fs from 'node:fs';
import { expect, test } from 'vitest';
import { POST as submit } from '@/app/sign-in/submit/route';
import { db } from '@/lib/db/client';
import { signedIn } from '../api/signed-in';

const sources = ['app', 'lib', 'scripts', 'seed'].flatMap((room) =>
  fs
    .readdirSync(room, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(tsx?|mjs)$/.test(file) && !file.startsWith('db/generated'))
    .map((file) => ({ file: `${room}/${file}`, text: fs.readFileSync(`${room}/${file}`, 'utf8') })),
);

test('S19 nothing signs in but through the HTTP door, where tries are counted', () => {
  const calls = sources.flatMap(({ file, text }) =>
    [...text.matchAll(/\bauth\.(api\.\w+|handler)\(/g)].map(([, call]) => `${file} ${call}`),
  );
  expect(calls.sort()).toEqual([
    'app/api/auth/[...all]/route.ts handler',
    'app/sign-in/submit/route.ts handler',
    'app/sign-out/route.ts api.signOut',
    'lib/auth/actor.ts api.getSession',
  ]);
});

test('S19 tries are counted by the address our server put there, whatever else a client says of itself', async () => {
  const { email } = await signedIn();
  const statuses: (string | null)[] = [];
  for (let i = 0; i < 12; i += 1) {
    const body = new URLSearchParams({ email: `${i}-${email}`, password: 'not-the-password' }).toString();
    const answer = await submit(
      new Request('http://localhost:3000/sign-in/submit', {
        method: 'POST',
        headers: {
          'content-type': 'application/x-www-form-urlencoded',
          'content-length': String(body.length),
          origin: 'http://localhost:3000',
          'x-client-address': '198.18.250.1',
          'x-forwarded-for': `203.0.113.${i}`,
          forwarded: `for=203.0.113.${i}`,
          'x-real-ip': `203.0.113.${i}`,
          'cf-connecting-ip': `203.0.113.${i}`,
        },
        body,
      }),
    );
    statuses.push(/problem=(\d+)/.exec(answer.headers.get('location') ?? '')?.[1] ?? null);
  }
  expect(statuses).toEqual([...Array(10).fill('401'), '429', '429']);
  expect(await db.signInLimit.count({ where: { who: { contains: '203.0.113' } } })).toBe(0);
});
