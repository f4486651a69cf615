import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { today } from '@/app/moment';
import { written } from '@/app/paths';
import { exportMonth } from '@/lib/register/commands/export-month';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { monthAsked } from '../../month';
import { monthRows } from '../../month-rows';

/** What happened in a month, one thing a row: faults, swaps, repairs that ended, days of the set review. */
export async function GET(request: Request, { params }: { params: Promise<{ month: string }> }): Promise<Response> {
  return askedBy(request, 'register.export', async (actor) => {
    const { timezone } = await siteSettings(actor);
    const month = monthAsked(written((await params).month), timezone);
    if (month === null) return problem(404, 'There is no such month: it is written as 2026-11.');
    const report = await exportMonth(actor, month, today(timezone));
    return fileAnswer(`report-${month.text}`, 'csv', monthRows(report));
  });
}
