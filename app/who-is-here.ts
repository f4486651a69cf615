import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { actorOf, signedInOf } from '@/lib/auth/actor';
import type { Actor } from '@/lib/auth/may';

/** The person asking; null when nobody is signed in. For forms, which must not lose what was typed on the way to the sign-in. */
export const personHere = async (): Promise<Actor | null> => actorOf(await headers());

/** The same with the session they ask by. */
export const sessionHere = async () => signedInOf(await headers());

/** The person asking. Without one, to the sign-in and from there back to `path`. */
export async function whoIsHere(path: string): Promise<Actor> {
  const actor = await personHere();
  if (actor === null) redirect(path === '/' ? '/sign-in' : `/sign-in?to=${encodeURIComponent(path)}`);
  return actor;
}

/** Who is signed in, as the bar shows it. */
export const personOf = ({ name }: Actor) => ({ href: '/person', words: name });
