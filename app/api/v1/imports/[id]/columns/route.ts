import { read } from '@/lib/plant/reading';
import { confirmImport } from '@/lib/register/commands/confirm-import';
import { importById } from '@/lib/register/queries/imports';
import { askedBy } from '../../../asked-by';
import { valueSent } from '../../../json-sent';
import { confirmImportOp } from '../../../operations/imports';
import { answer, problem } from '../../../problem';
import { importAnswerOf } from '../../import-answer';

export const POST = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, confirmImportOp.action, async (actor) => {
    const sent = await valueSent(request, confirmImportOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(confirmImportOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The columns are not understood.', told.problems);
    const { id } = await params;
    const run = await importById(actor, id);
    if (run === null) return problem(404, 'There is no such import at this site.');
    const { columns, mounting = null, area = null, store = null, keepUnknownWords, makePlaces } = told.value;
    const found = (run.columns?.columns ?? []).map(({ index, field, unit }) => ({ index, field, unit }));
    const said = (columns ?? []).map(({ index, field, unit = null }) => ({ index, field, unit }));
    const done = await confirmImport(actor, id, {
      columns: [...found.filter(({ index }) => !said.some((one) => one.index === index)), ...said],
      options: { mounting, area, store, keepUnknownWords: keepUnknownWords === true },
      makePlaces: makePlaces ?? true,
    });
    if (done.outcome === 'refused')
      return problem(
        422,
        'The columns cannot be so.',
        done.says.map((says) => ({ path: 'columns', value: null, says })),
      );
    if (done.outcome !== 'saved') return problem(409, 'The import waits for no columns.');
    return answer((await importAnswerOf(actor, id)) ?? {}, 202);
  });
