import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { today } from '@/app/moment';
import { groupPurchase, specificationOf } from '@/lib/purchase/group/group-purchase';
import { SPECIFICATION_HEAD, specificationRows } from '@/lib/purchase/rows';
import { groupOfSets } from '@/lib/register/queries/group-of-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { groupAsked } from '../group-asked';

/** The specification of a group as a file, a line a row. */
export async function GET(request: Request): Promise<Response> {
  return askedBy(request, 'set.assess', async (actor) => {
    const query = new URL(request.url).searchParams;
    const asked = groupAsked({ tag: query.getAll('tag'), id: query.getAll('id'), rating: query.getAll('rating') });
    const [{ sets }, { settings, timezone }] = await Promise.all([groupOfSets(actor, asked), siteSettings(actor)]);
    const asOf = today(timezone);
    const { options } = groupPurchase(sets, settings, asOf);
    const chosen = asked.rating === null ? options[0] : options.find(({ motor }) => motor.id === asked.rating);
    if (chosen === undefined) return problem(404, 'No standard rating answers these sets of this site.');
    return fileAnswer('purchase', 'csv', [
      SPECIFICATION_HEAD,
      ...specificationRows(specificationOf(sets, chosen, asOf)),
    ]);
  });
}
