import { read } from '@/lib/plant/reading';
import { applyImport, cancelImport, resumeImport, undoImport } from '@/lib/register/commands/steer-import';
import { askedBy } from '../../../asked-by';
import { valueSent } from '../../../json-sent';
import { steerImportOp } from '../../../operations/imports';
import { answer, problem } from '../../../problem';
import { importAnswerOf } from '../../import-answer';

const STEPS = { apply: applyImport, cancel: cancelImport, resume: resumeImport, undo: undoImport } as const;

export const POST = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, steerImportOp.action, async (actor) => {
    const sent = await valueSent(request, steerImportOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(steerImportOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The step is not understood.', told.problems);
    const { id } = await params;
    const done = await STEPS[told.value.step](actor, id);
    if (done === 'unknown') return problem(404, 'There is no such import at this site.');
    if (done === 'late') return problem(409, 'The import stands otherwise: ask how far it is.');
    return answer((await importAnswerOf(actor, id)) ?? {}, 202);
  });
