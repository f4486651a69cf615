import { askedBy } from '../../asked-by';
import { readImportOp } from '../../operations/imports';
import { answer, problem } from '../../problem';
import { importAnswerOf } from '../import-answer';

export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, readImportOp.action, async (actor) => {
    const run = await importAnswerOf(actor, (await params).id);
    return run === null ? problem(404, 'There is no such import at this site.') : answer(run);
  });
