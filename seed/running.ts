import { randomUUID } from 'node:crypto';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { tellMeasurement } from '@/lib/register/commands/tell-measurement';
import { foundRows } from '@/lib/register/review/found-rows';
import { findingKey } from '@/lib/register/review/keep-review-day';
import { keptReview } from '@/lib/register/review/kept-review';
import { sumOf } from '@/lib/review/list/grouped';
import { figuresOf, MEASURED } from './plant/measured';
import { FIRST_DAYS_AGO, NOT_KEPT, STEPS } from './plant/review-weeks';

/** What was read at running sets, as a technician would tell it. `sets`: their ids by tag. */
export async function measured(technician: Actor, sets: ReadonlyMap<string, string>, today: string): Promise<void> {
  for (const one of MEASURED) {
    const setId = sets.get(one.set);
    if (setId === undefined) throw new Error(`The demonstration has no ${one.set}.`);
    const at = new Date(`${daysBefore(today, one.daysAgo)}T09:20:00Z`);
    const told = { key: randomUUID(), setId, at, figures: figuresOf(one), note: one.note };
    const done = await tellMeasurement(technician, told);
    if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  }
}

/** Some weeks of review before today, told backwards from how it stands, so that the line goes on with what is kept next. */
export async function reviewWeeks(siteId: string, today: string): Promise<void> {
  const review = await keptReview(siteId);
  const found = foundRows(review);
  const { open, kwh, moneyHundredths, unpriced } = sumOf(found);
  const perKwh = kwh === 0 ? 0 : moneyHundredths / kwh;
  let stands = { open, kwh };
  const rows = [];
  for (let daysAgo = 1; daysAgo <= FIRST_DAYS_AGO; daysAgo += 1) {
    const day = new Date(`${daysBefore(today, daysAgo)}T00:00:00Z`);
    const step = STEPS.find((one) => one.daysAgo === daysAgo) ?? { opened: 0, closed: 0, kwh: 0 };
    const { opened, closed } = daysAgo === FIRST_DAYS_AGO ? { opened: null, closed: null } : step;
    if (!NOT_KEPT.includes(daysAgo))
      rows.push({
        ...{ siteId, day, sets: review.sets.size, open: stands.open, accepted: 0, unpriced },
        ...{ kwh: BigInt(stands.kwh), moneyHundredths: BigInt(Math.round(stands.kwh * perKwh)) },
        ...{ opened, closed, stood: daysAgo === 1 ? found.map(findingKey) : [] },
        at: new Date(`${daysBefore(today, daysAgo)}T22:17:00Z`),
      });
    stands = { open: stands.open - step.opened + step.closed, kwh: stands.kwh - step.kwh };
  }
  await db.reviewDay.createMany({ data: rows });
}

const DAY_MS = 86_400_000;

const daysBefore = (today: string, days: number): string =>
  new Date(Date.parse(`${today}T00:00:00Z`) - days * DAY_MS).toISOString().slice(0, 10);
