import type { ReactElement } from 'react';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { answered } from '@/app/answered';
import { askedBy } from '@/app/api/v1/asked-by';
import { Failure } from '@/app/failure';
import { signedIn } from './signed-in';

let cookie: string;
beforeAll(async () => {
  cookie = (await signedIn('technician')).cookie;
});

const SECRET = 'password of the pump room: heron';
const fails = async (): Promise<never> => {
  throw new Error(SECRET);
};

describe('S34 what nobody expected shows a reference and nothing else', () => {
  test('a route', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => {});
    const request = new Request('http://localhost:3000/api/v1/sets', { headers: { cookie } });
    const answer = await askedBy(request, 'register.read', fails);
    expect(answer.status).toBe(500);
    const body = await answer.json();
    const reference = /^Something failed here\. Its reference is ([0-9a-f]{8})\.$/.exec(body.title)?.[1];
    expect(body).toEqual({
      type: 'about:blank',
      status: 500,
      title: `Something failed here. Its reference is ${reference}.`,
    });
    // Whoever looks after it finds it in the log under that reference.
    expect(log.mock.calls.flat().join(' ')).toContain(`${reference} `);
    log.mockRestore();
  });

  test('a page', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => {});
    const shown = (await answered(fails)({})) as ReactElement<Parameters<typeof Failure>[0]>;
    expect(shown.type).toBe(Failure);
    expect(shown.props).toEqual({ isDatabaseGone: false, reference: expect.stringMatching(/^[0-9a-f]{8}$/) });
    expect(log.mock.calls.flat().join(' ')).toContain(`${shown.props.reference} `);
    expect(JSON.stringify(shown.props)).not.toContain('heron');
    log.mockRestore();
  });
});
