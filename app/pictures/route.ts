import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { failed, referenceText } from '@/app/failed';
import { ledTo, plainly } from '@/app/form-answer';
import { SIGNED_OUT } from '@/app/signed-out';
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
    const { isGone, reference } = failed(error, 'a photograph could not be kept');
    return isGone
      ? refused(503, 'The register’s database does not answer. Send it again in a minute.')
      : refused(500, referenceText(reference));
  }
}

const ledBack = (to: string, word: PictureWord) => ledTo(backTo(to, word));
const plain = (status: number, says: string) => plainly(status, `The photograph was not kept. ${says}`);
