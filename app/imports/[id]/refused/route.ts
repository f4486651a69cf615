import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { refusedFile } from '@/lib/import/refused-file';
import { refusedRows } from '@/lib/register/queries/import-rows';
import { importById } from '@/lib/register/queries/imports';

/** The refused rows of an import as they came, each with why: to be mended and imported again. */
export async function GET(request: Request, { params }: RouteContext<'/imports/[id]/refused'>): Promise<Response> {
  try {
    const actor = await askerFor(request, 'import.run');
    if (actor instanceof Response) return actor;
    const { id } = await params;
    const run = await importById(actor, id);
    if (run === null || run.columns === null) return problem(404, 'There is no such import, or it is not read yet.');
    const format = new URL(request.url).searchParams.get('format') ?? 'csv';
    if (format !== 'csv' && format !== 'xlsx') return problem(422, 'The format is csv or xlsx.');
    const rows = refusedFile(run.kind, run.columns.columns, await refusedRows(actor, id));
    return fileAnswer(`refused-${run.kind}`, format, rows);
  } catch (error) {
    const isGone = isDatabaseGone(error);
    const reference = crypto.randomUUID().slice(0, 8);
    console.error(`${reference} ${isGone ? 'the database is away' : 'refused rows could not be told'}`, error);
    return isGone
      ? problem(503, 'The register’s database does not answer. Ask again in a minute.')
      : problem(500, `Something failed here. Its reference is ${reference}.`);
  }
}
