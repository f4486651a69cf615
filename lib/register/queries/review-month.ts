import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { type MonthDays, type MonthOfDays, monthOfDays } from '@/lib/review/charts/month-of-days';

/** How the review went in a month, by the days that are kept of it. `today`: a day of the site, YYYY-MM-DD. */
export async function reviewMonth(actor: Actor, month: MonthDays, today: string): Promise<MonthOfDays> {
  must(actor, 'review.read');
  const { siteId } = actor;
  const from = atDay(month.from);
  const [rows, before] = await Promise.all([
    db.reviewDay.findMany({
      where: { siteId, day: { gte: from, lt: atDay(month.to) } },
      omit: { stood: true },
      orderBy: { day: 'asc' },
    }),
    db.reviewDay.findFirst({ where: { siteId, day: { lt: from } }, select: { day: true }, orderBy: { day: 'desc' } }),
  ]);
  const days = rows.map(({ day, open, accepted, opened, closed, kwh, moneyHundredths, unpriced }) => ({
    ...{ day: textOf(day), open, accepted, opened, closed, unpriced },
    ...{ kwh: Number(kwh), moneyHundredths: Number(moneyHundredths) },
  }));
  return monthOfDays(month, days, before === null ? null : textOf(before.day), today);
}

const atDay = (day: string) => new Date(`${day}T00:00:00Z`);
const textOf = (day: Date) => day.toISOString().slice(0, 10);
