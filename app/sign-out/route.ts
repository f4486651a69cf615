import { actorOf } from '@/lib/auth/actor';
import { auth } from '@/lib/auth/auth';
import { noteSignOut } from '@/lib/auth/note-sign-in';

/** Ends the session on the server, and has the browser forget what it kept of this site. */
export async function POST(request: Request) {
  const actor = await actorOf(request.headers);
  const answer = await auth.api.signOut({ headers: request.headers, asResponse: true });
  if (actor) await noteSignOut(actor);
  const headers = new Headers({ location: '/sign-in', 'clear-site-data': '"cache", "storage"' });
  for (const cookie of answer.headers.getSetCookie()) headers.append('set-cookie', cookie);
  return new Response(null, { status: 303, headers });
}
