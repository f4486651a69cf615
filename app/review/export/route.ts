import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { today } from '@/app/moment';
import { exportReview } from '@/lib/register/commands/export-review';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { reviewAsked } from '../review-asked';
import { reviewHead, reviewLine } from './review-line';

/** The findings as they are asked for, one a row, each with what would put it right. */
export async function GET(request: Request): Promise<Response> {
  return askedBy(request, 'register.export', async (actor) => {
    const { searchParams } = new URL(request.url);
    const format = searchParams.get('format') ?? 'csv';
    if (format !== 'csv' && format !== 'xlsx') return problem(422, 'The format is csv or xlsx.');
    const { timezone, settings } = await siteSettings(actor);
    const filter = reviewAsked(Object.fromEntries(searchParams));
    const found = await exportReview(actor, filter, today(timezone));
    return fileAnswer('review', format, lines(found, settings.currency));
  });
}

async function* lines(found: Awaited<ReturnType<typeof exportReview>>, currency: string | null) {
  yield reviewHead(currency);
  for await (const row of found) yield reviewLine(row);
}
