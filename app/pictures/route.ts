import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { SIGNED_OUT } from '@/app/signed-out';
import { isDatabaseGone } from '@/lib/db/database-gone';
import type { Problem } from '@/lib/plant/reading';
import { keepPicture } from '@/lib/register/commands/keep-picture';
import { pictureSent } from './picture-sent';
import { backTo, PICTURE_WORDS, type PictureWord } from './picture-words';

/**
 * Takes a photograph from a form. A browser without script is led back to the page it came from, which says what came
 * of it; whoever asks for no page is answered in JSON. What was refused before it was read is told at once.
 */
export async function POST(request: Request): Promise<Response> {
  const isPage = (request.headers.get('accept') ?? '').includes('text/html');
  const refused = (status: number, says: string, problems: Problem[] = []) =>
    isPage ? plain(status, says) : problem(status, says, problems);
  try {
    const actor = await askerFor(request, 'picture.keep');
    if (actor instanceof Response) return isPage && actor.status === 401 ? plain(401, SIGNED_OUT) : actor;
    const sent = await pictureSent(request);
    if ('status' in sent) return refused(sent.status, sent.says, sent.problems);
    const { of, caption, to, files } = sent;
    const [bytes = new Uint8Array()] = files;
    const done =
      files.length > 1
        ? ({ outcome: 'refused', why: 'several' } as const)
        : await keepPicture(actor, { of, caption, bytes });
    if (done.outcome === 'refused') return isPage ? ledBack(to, done.why) : problem(422, PICTURE_WORDS[done.why]);
    if (isPage) return ledBack(to, done.outcome === 'saved' ? 'kept' : 'same');
    const { pictureId } = done;
    const headers = { location: `/pictures/${pictureId}`, 'cache-control': 'private, no-store' };
    return Response.json({ pictureId }, { status: done.outcome === 'saved' ? 201 : 200, headers });
  } catch (error) {
    const isGone = isDatabaseGone(error);
    const reference = crypto.randomUUID().slice(0, 8);
    console.error(`${reference} ${isGone ? 'the database is away' : 'a photograph could not be kept'}`, error);
    return isGone
      ? refused(503, 'The register’s database does not answer. Send it again in a minute.')
      : refused(500, `Something failed here. Its reference is ${reference}.`);
  }
}

const ledBack = (to: string, word: PictureWord) =>
  new Response(null, { status: 303, headers: { location: backTo(to, word), 'cache-control': 'private, no-store' } });

/** For a person whose browser shows it as it stands. */
const plain = (status: number, says: string) =>
  new Response(`The photograph was not kept. ${says}\n\nYour browser’s way back leads to the form.\n`, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'private, no-store' },
  });
