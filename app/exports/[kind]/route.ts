import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { motorsAsked, type Query, setsAsked } from '@/app/lists/asked-for';
import { exportRegister } from '@/lib/register/commands/export-register';

/** The sets or motors of a list as a file that an import takes back. The question is that of the list. */
export async function GET(request: Request, { params }: RouteContext<'/exports/[kind]'>): Promise<Response> {
  return askedBy(request, 'register.export', async (actor) => {
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
  });
}
