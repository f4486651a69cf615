import { importRowsAfter } from '@/lib/register/queries/import-rows';
import { importById } from '@/lib/register/queries/imports';
import { askedBy } from '../../../asked-by';
import { importRowsOp } from '../../../operations/imports';
import { partSent } from '../../../part-sent';
import { problem } from '../../../problem';

export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, importRowsOp.action, async (actor) => {
    const { id } = await params;
    if ((await importById(actor, id)) === null) return problem(404, 'There is no such import at this site.');
    return partSent(request, importRowsOp, {
      isPlace: ([line, ...more]) => /^\d{1,9}$/.test(line ?? '') && more.length === 0,
      find: (behind, take, { outcome }) => importRowsAfter(actor, id, outcome ?? null, Number(behind?.[0] ?? 0), take),
      keysAt: ({ line }) => [String(line)],
      told: ({ line, outcome, key, changes, problems }) => ({
        ...{ line, outcome, key, problems },
        changes: changes.map(({ thing, field, from, to }) => ({ thing, field, from, to })),
      }),
    });
  });
