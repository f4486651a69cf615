import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { workedOut } from '@/lib/energy/worked-out';
import { type LoadHistogram, loadHistogram } from '@/lib/review/charts/load-histogram';
import { type AreaLoss, lossesByArea } from '@/lib/review/charts/losses-by-area';
import { keptReview } from '../review/kept-review';
import type { ReviewedSet } from '../review/reviewed-set';

/** How the review stood at the end of a day. */
export interface KnownDay {
  /** YYYY-MM-DD where the site is. */
  day: string;
  open: number;
  accepted: number;
  /** Of the open ones, in hundredths of the site's money a year. */
  moneyHundredths: number;
}

export interface ReviewCharts {
  loads: LoadHistogram;
  losses: AreaLoss[];
  /** Oldest first. */
  days: KnownDay[];
}

/** As many days as the trend goes back. */
const MOST_DAYS = 366;

/** How loaded the site's motors are, what they lose in a year by area, and how the review went day by day. */
export async function reviewCharts(actor: Actor): Promise<ReviewCharts> {
  must(actor, 'review.read');
  const { siteId } = actor;
  const [{ sets, plant }, days] = await Promise.all([
    keptReview(siteId),
    db.reviewDay.findMany({ where: { siteId }, orderBy: { day: 'desc' }, take: MOST_DAYS }),
  ]);
  const held = [...sets.values()].filter(({ standing }) => standing !== null);
  return {
    loads: loadHistogram(held.map(({ standing }) => standing?.loadPct ?? null)),
    losses: lossesByArea(held.map((one) => lossOf(one, plant.settings.pricePerKwh))),
    days: days.reverse().map(({ day, open, accepted, moneyHundredths }) => ({
      ...{ day: day.toISOString().slice(0, 10), open, accepted, moneyHundredths: Number(moneyHundredths) },
    })),
  };
}

function lossOf({ kept, standing }: ReviewedSet, price: number | null) {
  if (standing === null) return { area: kept.area, kwh: null, money: null };
  const { lossesKw, hoursPerYear } = standing.running;
  const kwh = workedOut({ lossesKw, hoursPerYear }, (of) => of.lossesKw * of.hoursPerYear, 'losses × hours').value;
  return { area: kept.area, kwh, money: kwh === null || price === null ? null : kwh * price };
}
