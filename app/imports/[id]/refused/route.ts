import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { refusedFile } from '@/lib/import/refused-file';
import { refusedRows } from '@/lib/register/queries/import-rows';
import { importById } from '@/lib/register/queries/imports';

/** The refused rows of an import as they came, each with why: to be mended and imported again. */
export async function GET(request: Request, { params }: RouteContext<'/imports/[id]/refused'>): Promise<Response> {
  return askedBy(request, 'import.run', async (actor) => {
    const { id } = await params;
    const run = await importById(actor, id);
    if (run === null || run.columns === null) return problem(404, 'There is no such import, or it is not read yet.');
    const format = new URL(request.url).searchParams.get('format') ?? 'csv';
    if (format !== 'csv' && format !== 'xlsx') return problem(422, 'The format is csv or xlsx.');
    const rows = refusedFile(run.kind, run.columns.columns, await refusedRows(actor, id));
    return fileAnswer(`refused-${run.kind}`, format, rows);
  });
}
