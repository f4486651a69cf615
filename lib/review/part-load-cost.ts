import { runningOf } from '@/lib/energy/running-of';
import { known, unknown, type WorkedOut, workedOut } from '@/lib/energy/worked-out';
import { figure } from '@/lib/units/figure';
import type { YearlyCost } from './finding';
import type { ReviewCase } from './review-case';

/**
 * What a motor takes in a year more at its part load than it would at its full-load efficiency: load × (1/η − 1/η rated)
 * × hours run, at the site's price. Whatever another motor would take is not in it: that stands with the cure.
 */
export function partLoadCost({ set, motor, context, by: { settings } }: ReviewCase): YearlyCost {
  const { loadKw, efficiencyPct, ratedEfficiencyPct, hoursPerYear } = runningOf(set, motor, settings);
  const kwh = workedOut(
    { loadKw, efficiencyPct, ratedEfficiencyPct, hoursPerYear },
    (of) => of.loadKw * (100 / of.efficiencyPct - 100 / of.ratedEfficiencyPct) * of.hoursPerYear,
    'part-load efficiency against that at full load',
  );
  if (kwh.value === null) return { kind: 'unpriced', kwh: null, why: kwh.why };
  const price = priceOf(settings.pricePerKwh);
  if (price.value === null) return { kind: 'unpriced', kwh: kwh.value, why: price.why };
  // All four are known, or the sum would not be.
  const told = [loadKw, efficiencyPct, ratedEfficiencyPct, hoursPerYear].map(({ value }) => value);
  const [kw, now, best, hours] = told as [number, number, number, number];
  return {
    kind: 'known',
    kwh: kwh.value,
    money: kwh.value * price.value,
    from: `${figure(kw, 3)} kW × (1 / ${figure(now / 100, 4)} − 1 / ${figure(best / 100, 4)}) × ${figure(hours, 0)} h × ${figure(price.value, 4)} a kWh${isSmall(context.row.kw) ? SMALL : ''}`,
  };
}

/** So small motors differ from the curve by more than three points: two public data sheets, makers withheld (one text each). */
const SMALL_UP_TO_KW = 1.5;
const isSmall = (kw: number | null): boolean => kw !== null && kw <= SMALL_UP_TO_KW;
const SMALL =
  '; roughly: the printed curve is of 1996, and small motors differ from it (public data sheets at half load: 0.75 kW 80.6 %, where it gives 73 %; 1.5 hp 66.6 %, where it gives 79 %)';

const priceOf = (price: number | null): WorkedOut =>
  price === null ? unknown('The site has not told the price of a kWh.') : known(price, 'the site’s price of a kWh');
