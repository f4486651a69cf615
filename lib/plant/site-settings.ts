import { z } from 'zod';
import { fromZeroTo, oneOf, told, upTo } from './told';
import { WORK_IDS, type WorkId } from './work';

/** Efficiency classes of IEC 60034-30-1. At 60 Hz IE2 is the energy-efficient level of NEMA MG 1, IE3 its premium. */
export const IE_CLASSES = ['IE1', 'IE2', 'IE3', 'IE4'] as const;
export type IeClass = (typeof IE_CLASSES)[number];

/** How much it matters that a set stands: 1 stops the plant ... 4 can wait. */
export const CRITICALITIES = [1, 2, 3, 4] as const;

const MOST_MONEY = 100_000_000;

/** Money for each hour that a set of that criticality stands still; null: not told. */
const downtimePerHour = z
  .strictObject({
    1: fromZeroTo(MOST_MONEY),
    2: fromZeroTo(MOST_MONEY),
    3: fromZeroTo(MOST_MONEY),
    4: fromZeroTo(MOST_MONEY),
  })
  .nullish()
  .transform((told) => told ?? { 1: null, 2: null, 3: null, 4: null });

/**
 * What a site decides for itself. Hours per kind of work, prices, hours run in a year. Null: the site has not said, and
 * then nothing that rests on it is told. Money is in `currency`. What was kept before a key was there reads as null.
 */
export const siteSettings = z.strictObject({
  hours: z.record(z.enum(WORK_IDS), z.number().nonnegative().max(200)),
  pricePerKwh: z.number().nonnegative().max(10).nullable(),
  currency: z.string().length(3).nullable(),
  hoursPerYear: z.number().nonnegative().max(8_784).nullable(),
  /** Where the set states no shim limit: the greatest stack of shims, mm. */
  shimLimitMm: z.number().nonnegative().max(50),
  /** What an hour of work on a set costs. */
  workPerHour: fromZeroTo(100_000),
  downtimePerHour,
  /** Per cent a year by which money later is worth less than money now. */
  discountRatePct: fromZeroTo(50),
  /** How many years a motor is reckoned with. */
  lifeYears: told(z.number().int().positive().max(40)),
  /** Per cent a year by which the price of energy rises; below zero: falls. */
  energyPriceGrowthPct: told(z.number().min(-20).max(50)),
  /** The class that a motor counts as whose plate prints no efficiency. */
  unprintedClass: oneOf(IE_CLASSES),
  /** The supplier's: reactive power above what this power factor allows is paid for. */
  leastPowerFactor: upTo(1),
  /** What a kvar above that costs in a year. */
  pricePerKvarYear: fromZeroTo(MOST_MONEY),
  /** Days, not working days, until a bought standard motor is in the plant. */
  deliveryDays: fromZeroTo(1_000),
  /** The same for one that is made to order: washdown, area-classified, special voltage. */
  specialDeliveryDays: fromZeroTo(1_000),
  /** Days, not working days, until a motor is back from repair with a new winding. */
  repairDays: fromZeroTo(1_000),
});
export interface SiteSettings extends z.output<typeof siteSettings> {
  hours: Record<WorkId, number>;
}
