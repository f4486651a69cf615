import { importRowsAfter } from '@/lib/register/queries/import-rows';
import { importById } from '@/lib/register/queries/imports';
import { askedBy } from '../../../asked-by';
import { importRowsOp } from '../../../operations/imports';
import { keysOf, noPlace, placeOf } from '../../../place-in-list';
import { answer, problem } from '../../../problem';
import { querySent } from '../../../query-sent';

export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, importRowsOp.action, async (actor) => {
    const asked = querySent(request, importRowsOp.query);
    if (asked instanceof Response) return asked;
    const keys = keysOf(asked.after, 1);
    if (keys instanceof Response) return keys;
    const [line = '0'] = keys;
    if (!/^\d{1,9}$/.test(line)) return noPlace(asked.after ?? '');
    const { id } = await params;
    if ((await importById(actor, id)) === null) return problem(404, 'There is no such import at this site.');
    const take = asked.limit ?? 100;
    const rows = await importRowsAfter(actor, id, asked.outcome ?? null, Number(line), take + 1);
    const last = rows.length > take ? rows[take - 1] : undefined;
    return answer({
      items: rows.slice(0, take).map(({ line, outcome, key, changes, problems }) => ({
        ...{ line, outcome, key, problems },
        changes: changes.map(({ thing, field, from, to }) => ({ thing, field, from, to })),
      })),
      next: last === undefined ? null : placeOf([String(last.line)]),
    });
  });
