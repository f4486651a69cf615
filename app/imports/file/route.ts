import { z } from 'zod';
import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { formSent, misread } from '@/app/form-sent';
import { SIGNED_OUT } from '@/app/signed-out';
import { isDatabaseGone } from '@/lib/db/database-gone';
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
    const isGone = isDatabaseGone(error);
    const reference = crypto.randomUUID().slice(0, 8);
    console.error(`${reference} ${isGone ? 'the database is away' : 'a file could not be taken'}`, error);
    if (isGone) return refused(503, 'away');
    return isPage
      ? plain(500, `Something failed here. Its reference is ${reference}.`)
      : problem(500, `Something failed here. Its reference is ${reference}.`);
  }
}

const WORD_OF = { 413: 'large', 415: 'form', 400: 'form', 422: 'form' } as const satisfies Record<number, SaidWord>;

const ledTo = (path: string) =>
  new Response(null, { status: 303, headers: { location: path, 'cache-control': 'private, no-store' } });

/** For a person whose browser shows it as it stands. */
const plain = (status: number, says: string) =>
  new Response(`The file was not kept. ${says}\n\nYour browser’s way back leads to the form.\n`, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'private, no-store' },
  });
