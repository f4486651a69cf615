import { assess } from '@/lib/matching/assess';
import { assessCase } from '@/lib/plant/assess-case';
import { jsonText } from '@/lib/plant/json-text';
import { read } from '@/lib/plant/reading';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { askedBy } from '../asked-by';
import { jsonSent } from '../json-sent';
import { assessOp } from '../operations/judging';
import { answer, problem } from '../problem';

/** Judges and orders the candidates of one set, as `npm run assess` does, with the hours and prices of the asker's site. */
export const POST = (request: Request) =>
  askedBy(request, assessOp.action, async (actor) => {
    const text = await jsonSent(request);
    if (text instanceof Response) return text;
    const json = jsonText(text);
    if (!json.ok) return problem(400, 'The body is not JSON.', json.problems);
    const asked = read(assessCase, json.value);
    if (!asked.ok) return problem(422, 'The case cannot be judged as it stands.', asked.problems);
    const { settings } = await siteSettings(actor);
    return answer(assess(asked.value, settings));
  });
