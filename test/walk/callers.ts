import fs from 'node:fs';
import type { Role } from '@/lib/auth/may';
import type { ActionDoor } from './actions';
import type { Site } from './site';

/** Who comes to a door: nobody, or somebody of the first site or of the other. */
export interface Caller {
  name: string;
  role: Role | null;
  isHere: boolean;
  headers: Record<string, string>;
}

export const NOBODY: Caller = { name: 'nobody', role: null, isHere: true, headers: {} };

/** Somebody who signs in as a browser does. Tries from one address are limited to a few in ten seconds. */
export async function signedIn(
  base: string,
  { role, isHere, email, password }: { role: Role; isHere: boolean; email: string; password: string },
): Promise<Caller> {
  for (let tries = 0; tries < 20; tries += 1) {
    const answer = await fetch(`${base}/api/auth/sign-in/email`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: base },
      body: JSON.stringify({ email, password }),
    });
    const cookies = answer.headers.getSetCookie().map((cookie) => cookie.split(';')[0]);
    const headers = { cookie: cookies.join('; ') };
    if (answer.ok) return { name: `${role}${isHere ? '' : ' of the other site'}`, role, isHere, headers };
    await new Promise((resolve) => setTimeout(resolve, 3_000));
  }
  throw new Error(`${email} could not sign in`);
}

/** A page, as a browser asks for it, or as the pages' own script does for the next one. */
export const getPage = (base: string, { headers }: Caller, path: string, how: 'html' | 'script' = 'html') =>
  fetch(`${base}${path}`, {
    redirect: 'manual',
    headers: { ...headers, ...(how === 'html' ? { accept: 'text/html' } : { rsc: '1', accept: '*/*' }) },
  });

export interface Sent {
  body?: unknown;
  type?: string | undefined;
}

export function askRoute(base: string, { headers }: Caller, method: string, path: string, { body, type }: Sent) {
  return fetch(`${base}${path}`, {
    ...{ method, redirect: 'manual' },
    headers: {
      ...headers,
      origin: base,
      ...(type !== undefined && { 'content-type': type }),
      ...(method === 'PATCH' && { 'if-match': '"1"' }),
      ...(path.endsWith('/swaps') && { 'idempotency-key': crypto.randomUUID() }),
    },
    ...(body !== undefined && { body: body as BodyInit }),
  });
}

/** An action by its id, as a page's own script sends it: its arguments are written as React writes them. */
export function act(
  base: string,
  site: Site,
  { headers }: Caller,
  { at, isAsked }: ActionDoor,
  id: string,
  fields: Record<string, string>,
) {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(`_1_${name}`, value);
  form.append('0', isAsked ? '[{"outcome":"asked"},"$K1"]' : '["$K1"]');
  const path = site.filled(at);
  return fetch(`${base}${path}`, {
    ...{ method: 'POST', redirect: 'manual', body: form },
    headers: { ...headers, origin: base, referer: `${base}${path}`, 'next-action': id, accept: 'text/x-component' },
  });
}

/** The build's own list of actions, by file and name. */
export function actionIds(): Map<string, string> {
  const { node } = JSON.parse(fs.readFileSync('.next/server/server-reference-manifest.json', 'utf8'));
  return new Map(
    Object.entries(node as Record<string, { filename: string; exportedName: string }>).map(
      ([id, { filename, exportedName }]) => [`${filename} ${exportedName}`, id],
    ),
  );
}
