import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { actorOf } from '@/lib/auth/actor';
import type { Actor } from '@/lib/auth/may';

/** The person asking. Without one, to the sign-in and from there back to `path`. */
export async function whoIsHere(path: string): Promise<Actor> {
  const actor = await actorOf(await headers());
  if (actor === null) redirect(path === '/' ? '/sign-in' : `/sign-in?to=${encodeURIComponent(path)}`);
  return actor;
}

/** Who is signed in, as the bar shows it. */
export const personOf = ({ name }: Actor) => ({ href: '/person', words: name });
