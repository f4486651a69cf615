import type { FaultAt } from '@/lib/register/fault-line';
import type { SwapLine } from '@/lib/register/history-line';
import type { EndedRepair, MonthReport } from '@/lib/register/queries/month-report';
import type { MonthOfDays, ReviewedDay, Stretch } from '@/lib/review/charts/month-of-days';

/** A month as a sheet: its headings, then one thing a row, every row as wide as the headings. */
export function monthRows({
  faults,
  swaps,
  repairs,
  review,
}: Pick<MonthReport, 'faults' | 'swaps' | 'repairs'> & { review: MonthOfDays }): Row[] {
  const events = [...faults.map(ofFault), ...swaps.map(ofSwap), ...repairs.map(ofRepair)];
  const rows = [...events, ...review.days.map(ofReviewDay), ...review.missing.map(ofMissing)];
  return [HEAD, ...rows.map((row) => HEAD.map((_, i) => row[i] ?? null))];
}

const HEAD = [
  ...['What', 'Set', 'Motor', 'Motor out', 'Said', 'From (UTC)', 'To (UTC)', 'Minutes', 'How', 'By'],
  ...['Day', 'To day', 'Findings open', 'Findings accepted', 'Findings opened', 'Findings closed'],
  ...['kWh a year', 'Money a year', 'Money not known'],
];
/** What happens at a moment fills the first cells, the review those behind them. */
const OF_EVENTS = 10;
const NO_EVENT: Row = Array<null>(OF_EVENTS - 1).fill(null);

type Row = (string | number | null)[];

const ofFault = ({ tag, motor, says, at, closedAt, closedBy, by }: FaultAt): Row => [
  ...['fault', tag, motor, null, says, at.toISOString(), momentOf(closedAt), minutes(at, closedAt), closedBy, by],
];

const ofSwap = ({ setTag, motorIn, motorOut, why, at, verdict, by }: SwapLine): Row => [
  ...['swap', setTag, motorIn, motorOut, why, at.toISOString(), null, null, verdict, by],
];

const ofRepair = ({ setTag, motor, reason, at, endedAt, decision }: EndedRepair): Row => [
  ...['repair', setTag, motor, null, reason, at.toISOString(), endedAt.toISOString(), minutes(at, endedAt), decision],
  null,
];

const ofReviewDay = (one: ReviewedDay): Row => [
  ...['review', ...NO_EVENT, one.day, null, one.open, one.accepted, one.opened, one.closed],
  ...[one.kwh, one.moneyHundredths / 100, one.unpriced],
];

const ofMissing = ({ first, last }: Stretch): Row => ['review not kept', ...NO_EVENT, first, last];

const momentOf = (at: Date | null) => (at === null ? null : at.toISOString());
const minutes = (from: Date, to: Date | null) =>
  to === null ? null : Math.round((to.getTime() - from.getTime()) / 60_000);
