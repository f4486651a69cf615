import { auth } from '@/lib/auth/auth';
import type { Actor, Role } from '@/lib/auth/may';
import { registerPerson } from '@/lib/register/commands/register-person';
import { someone } from '../register/plant';

export const PASSWORD = 'heron-quarry-lantern';
let count = 0;

/** Somebody of a site of their own who signed in over HTTP, with the cookie their browser would send. */
export async function signedIn(role: Role = 'technician'): Promise<{ actor: Actor; cookie: string; email: string }> {
  const { siteId } = await someone('administrator');
  const email = `${crypto.randomUUID()}@example.com`;
  const actor = await registerPerson(null, { siteId, name: 'Ida Fenn', email, role, password: PASSWORD });
  count += 1;
  const answer = await signIn(email, PASSWORD, `198.19.${count >> 8}.${count & 255}`);
  if (answer.status !== 200) throw new Error(`sign-in answered ${answer.status}`);
  return { actor, email, cookie: cookiesOf(answer) };
}

/** A sign-in as it comes from a browser at that address. */
export const signIn = (email: string, password: string, address: string) =>
  auth.handler(
    new Request('http://localhost:3000/api/auth/sign-in/email', {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-client-address': address, origin: 'http://localhost:3000' },
      body: JSON.stringify({ email, password }),
    }),
  );

export const cookiesOf = (answer: Response) =>
  answer.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ');
