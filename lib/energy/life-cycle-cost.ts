import { toldOr, type WorkedOut, workedOut } from './worked-out';

/** What a life-cycle cost rests on. Null: not known, and then the parts that rest on it are not told. Money in one currency. */
export interface LifeCycleAssumptions {
  purchase: number | null;
  /** What the energy of a year costs at today's price. */
  energyPerYear: number | null;
  years: number | null;
  discountRatePct: number | null;
  energyPriceGrowthPct: number | null;
  workHours: number | null;
  workPerHour: number | null;
  /** Hours that the set stands still for it. */
  downHours: number | null;
  downtimePerHour: number | null;
}

export interface LifeCycleCost {
  purchase: WorkedOut;
  work: WorkedOut;
  downtime: WorkedOut;
  /** Of all years, at its present value. */
  energy: WorkedOut;
  /** Of those that are known; null where one is not. */
  total: WorkedOut;
}

/**
 * Present value of buying, fitting, standing still and running. Purchase, work and downtime fall now; the energy of each
 * year is paid at its end, at the price it has grown to by then. Repairs, residual value and taxes are not in it.
 */
export function lifeCycleCost(told: LifeCycleAssumptions): LifeCycleCost {
  const part = (key: keyof LifeCycleAssumptions) => toldOr(told[key], LABELS[key], `${LABELS[key]}: not known.`);
  const purchase = part('purchase');
  const work = workedOut(
    { hours: part('workHours'), price: part('workPerHour') },
    (of) => of.hours * of.price,
    'hours of work × price of an hour',
  );
  const downtime = workedOut(
    { hours: part('downHours'), price: part('downtimePerHour') },
    (of) => of.hours * of.price,
    'hours down × cost of an hour down',
  );
  const energy = workedOut(
    {
      energyPerYear: part('energyPerYear'),
      years: part('years'),
      discountRatePct: part('discountRatePct'),
      energyPriceGrowthPct: part('energyPriceGrowthPct'),
    },
    (of) => of.energyPerYear * presentYears(of.years, of.discountRatePct / 100, of.energyPriceGrowthPct / 100),
    'energy of each year, paid at its end, at present value',
  );
  const total = workedOut(
    { purchase, work, downtime, energy },
    (of) => of.purchase + of.work + of.downtime + of.energy,
    'purchase, work, downtime and energy',
  );
  return { purchase, work, downtime, energy, total };
}

/**
 * Σ ((1+g)/(1+r))^t over t = 1 … years: the modified uniform present value factor of NIST Handbook 135, and the sum of the
 * guide to pump life cycle costs DOE/GO-102001-1190 (both from memory).
 */
export function presentYears(years: number, discountRate: number, growth: number): number {
  const ratio = (1 + growth) / (1 + discountRate);
  let sum = 0;
  let worth = 1;
  for (let year = 1; year <= years; year++) {
    worth *= ratio;
    sum += worth;
  }
  return sum;
}

const LABELS: Record<keyof LifeCycleAssumptions, string> = {
  purchase: 'Price of the motor or of its repair',
  energyPerYear: 'Energy of a year',
  years: 'Years it is reckoned with',
  discountRatePct: 'Discount rate',
  energyPriceGrowthPct: 'Growth of the price of energy',
  workHours: 'Hours of work',
  workPerHour: 'Price of an hour of work',
  downHours: 'Hours down',
  downtimePerHour: 'Cost of an hour down',
};
