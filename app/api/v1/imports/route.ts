import { createHash } from 'node:crypto';
import { bodyWithin } from '@/app/body-within';
import { dialectOf, startImportIn } from '@/lib/register/commands/start-import';
import { NO_COUNTS } from '@/lib/register/import/run';
import { askedBy } from '../asked-by';
import { onceSent } from '../once-sent';
import { startImportOp } from '../operations/imports';
import { problem } from '../problem';
import { querySent } from '../query-sent';

const MOST_MB = 25;
const TYPES: readonly string[] = startImportOp.body.types;

/** Takes a file as the body itself; it is told by its bytes, whatever its type says. */
export const POST = (request: Request) =>
  askedBy(request, startImportOp.action, async (actor) => {
    const asked = querySent(request, startImportOp.query);
    if (asked instanceof Response) return asked;
    const type = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase() ?? '';
    if (!TYPES.includes(type)) return problem(415, `Send the file as ${TYPES.join(' or ')}.`);
    const bytes = await bodyWithin(request, MOST_MB * 1024 * 1024);
    if (bytes === null) return problem(413, `The file is larger than ${MOST_MB} MB.`);
    const { kind, name = 'without a name' } = asked;
    const dialect = await dialectOf(bytes);
    const sum = createHash('sha256').update(bytes).digest('hex');
    return onceSent(request, actor, `${kind} ${name} ${sum}`, async (tx) => {
      const done = await startImportIn(tx, actor, { fileName: name, bytes, kind }, dialect);
      if (done.outcome === 'refused')
        return { status: 422, title: done.says, problems: [{ path: '(whole)', value: null, says: done.says }] };
      const id = done.runId;
      const written = typeof dialect === 'string' ? null : dialect;
      const body = {
        ...{ id, kind, status: 'reading', says: null, counts: NO_COUNTS, changeId: null, columns: [] },
        fileName: done.fileName,
        written: written && {
          format: written.format,
          encoding: written.encoding,
          delimiter: written.delimiter,
          decimal: written.decimal,
          sheet: written.sheet,
        },
      };
      return { status: 202, body, location: `/api/v1/imports/${id}` };
    });
  });
