import { type Actor, must } from '@/lib/auth/may';
import type { MonthDays, MonthOfDays } from '@/lib/review/charts/month-of-days';
import { type MonthReport, monthReport, type Span } from '../queries/month-report';
import { reviewMonth } from '../queries/review-month';
import { recordExport } from './export-step';

/** As many faults, swaps and repairs each as one file has. */
const MOST = 20_000;

/**
 * What happened in a month, and how its review went; that it went out is in the audit. `days` are those of `span` where the
 * site is, `today` is one of the site.
 */
export async function exportMonth(
  actor: Actor,
  { span, days }: { span: Span; days: MonthDays },
  today: string,
): Promise<MonthReport & { review: MonthOfDays }> {
  must(actor, 'register.export');
  const report = await monthReport(actor, span, MOST);
  const review = await reviewMonth(actor, days, today);
  const events = report.faults.length + report.swaps.length + report.repairs.length;
  const after = { kind: 'month', rows: events + review.days.length + review.missing.length };
  await recordExport(actor, after);
  return { ...report, review };
}
