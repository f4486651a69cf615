import { areasAfter } from '@/lib/register/queries/places-after';
import { askedBy } from '../asked-by';
import { listAreasOp } from '../operations/register';
import { keysOf, placeOf } from '../place-in-list';
import { answer } from '../problem';
import { querySent } from '../query-sent';

export const GET = (request: Request) =>
  askedBy(request, listAreasOp.action, async (actor) => {
    const asked = querySent(request, listAreasOp.query);
    if (asked instanceof Response) return asked;
    const keys = keysOf(asked.after, 1);
    if (keys instanceof Response) return keys;
    const take = asked.limit ?? 50;
    const areas = await areasAfter(actor, keys[0] ?? null, take + 1);
    const last = areas.length > take ? areas[take - 1] : undefined;
    return answer({ items: areas.slice(0, take), next: last === undefined ? null : placeOf([last.name]) });
  });
