import { readPlate } from '@/lib/nameplate/read-plate';
import { read } from '@/lib/plant/reading';
import { askedBy } from '../asked-by';
import { valueSent } from '../json-sent';
import { plateOp } from '../operations/judging';
import { answer, problem } from '../problem';

export const POST = (request: Request) =>
  askedBy(request, plateOp.action, async () => {
    const sent = await valueSent(request, plateOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(plateOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The text cannot be read.', told.problems);
    const plate = readPlate(told.value.text);
    const isRefused = plate.problems.some(({ path }) => path === '(whole)');
    return isRefused ? problem(422, 'The text is no plate.', plate.problems) : answer(plate);
  });
