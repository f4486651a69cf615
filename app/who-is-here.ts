import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { actorOf, signedInOf } from '@/lib/auth/actor';
import { type Action, type Actor, must } from '@/lib/auth/may';

/**
 * The door of a page: who asks for it, if they may. Without anybody, to the sign-in and from there back to `path`; whose
 * role may not is refused with NotAllowed, which answered.tsx tells.
 */
export async function whoMay(action: Action, path: string): Promise<Actor> {
  const actor = await actorOf(await headers());
  if (actor === null) redirect(path === '/' ? '/sign-in' : `/sign-in?to=${encodeURIComponent(path)}`);
  must(actor, action);
  return actor;
}

/**
 * The door of a form: who sends it, if they may; null when nobody is signed in, since what was typed must not be lost on
 * the way to the sign-in. Whose role may not is refused with NotAllowed, which the form tells (refused-by-role.ts).
 */
export async function whoDoes(action: Action): Promise<Actor | null> {
  const actor = await actorOf(await headers());
  if (actor !== null) must(actor, action);
  return actor;
}

/** The person asking with the session they ask by, for who looks after their own; null when nobody is signed in. */
export const sessionHere = async () => signedInOf(await headers());

/** Who is signed in, as the bar shows it. */
export const personOf = ({ name }: Actor) => ({ href: '/person', words: name });
