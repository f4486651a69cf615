import { askerFor } from '@/app/api/v1/asker-for';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { motorsAsked, type Query, setsAsked } from '@/app/lists/asked-for';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { exportRegister } from '@/lib/register/commands/export-register';

/** The sets or motors of a list as a file that an import takes back. The question is that of the list. */
export async function GET(request: Request, { params }: RouteContext<'/exports/[kind]'>): Promise<Response> {
  try {
    const actor = await askerFor(request, 'register.export');
    if (actor instanceof Response) return actor;
    const { kind } = await params;
    if (kind !== 'sets' && kind !== 'motors') return problem(404, 'What can be exported is sets and motors.');
    const { searchParams } = new URL(request.url);
    const format = searchParams.get('format') ?? 'csv';
    if (format !== 'csv' && format !== 'xlsx') return problem(422, 'The format is csv or xlsx.');
    const query: Query = Object.fromEntries(searchParams);
    const rows = await exportRegister(
      actor,
      kind === 'sets' ? { kind, filter: setsAsked(query) } : { kind, filter: motorsAsked(query) },
    );
    return fileAnswer(kind, format, rows);
  } catch (error) {
    const isGone = isDatabaseGone(error);
    const reference = crypto.randomUUID().slice(0, 8);
    console.error(`${reference} ${isGone ? 'the database is away' : 'an export failed'}`, error);
    return isGone
      ? problem(503, 'The register’s database does not answer. Ask again in a minute.')
      : problem(500, `Something failed here. Its reference is ${reference}.`);
  }
}
