import { z } from 'zod';
import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { failed, referenceText } from '@/app/failed';
import { ledTo, plainly } from '@/app/form-answer';
import { formSent, misread } from '@/app/form-sent';
import { SIGNED_OUT } from '@/app/signed-out';
import { type Problem, read } from '@/lib/plant/reading';
import { startImport } from '@/lib/register/commands/start-import';
import { SAID_WORDS, type SaidWord } from '../import-words';

const LIMITS = { file: 'file', mostMb: 25, mostParts: 6 };
const fields = z.strictObject({ kind: z.enum(['sets', 'motors']) });

/**
 * Takes a file to import from a form. A browser is led to the import's page, with script and without; whoever asks for
 * no page is answered in JSON.
 */
export async function POST(request: Request): Promise<Response> {
  const isPage = (request.headers.get('accept') ?? '').includes('text/html');
  const refused = (status: number, word: SaidWord, problems: Problem[] = []) =>
    isPage ? ledTo(`/imports?said=${word}`) : problem(status, SAID_WORDS[word], problems);
  try {
    const actor = await askerFor(request, 'import.run');
    if (actor instanceof Response) return isPage && actor.status === 401 ? plain(401, SIGNED_OUT) : actor;
    const sent = await formSent(request, LIMITS);
    if ('status' in sent)
      return isPage ? refused(sent.status, WORD_OF[sent.status]) : problem(sent.status, sent.says, sent.problems);
    const [file, more] = sent.files.filter(({ size, name }) => size > 0 || name !== '');
    if (file === undefined || more !== undefined) return refused(422, 'one');
    const asked = read(fields, sent.fields);
    if (!asked.ok) return refused(422, 'kind', misread(...asked.problems).problems);
    const bytes = new Uint8Array(await file.arrayBuffer());
    const done = await startImport(actor, { fileName: file.name, bytes, kind: asked.value.kind });
    const { runId } = done;
    if (isPage) return ledTo(`/imports/${runId}`);
    if (done.outcome === 'refused') return problem(422, done.says);
    const headers = { location: `/imports/${runId}`, 'cache-control': 'private, no-store' };
    return Response.json({ importId: runId }, { status: 201, headers });
  } catch (error) {
    const { isGone, reference } = failed(error, 'a file could not be taken');
    if (isGone) return refused(503, 'away');
    const says = referenceText(reference);
    return isPage ? plain(500, says) : problem(500, says);
  }
}

const WORD_OF = { 413: 'large', 415: 'form', 400: 'form', 422: 'form' } as const satisfies Record<number, SaidWord>;

const plain = (status: number, says: string) => plainly(status, `The file was not kept. ${says}`);
