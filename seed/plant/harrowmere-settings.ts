import { defaultSettings } from '@/lib/matching/default-settings';
import type { SiteSettings } from '@/lib/plant/site-settings';

/** What the first plant has told of its prices and times: all of it invented. The second has told little. */
export const harrowmereSettings: SiteSettings = {
  ...defaultSettings,
  ...{ currency: 'EUR', pricePerKwh: 0.14, hoursPerYear: 6_000, energyPriceGrowthPct: 2 },
  ...{ leastPowerFactor: 0.9, pricePerKvarYear: 16 },
  ...{ workPerHour: 58, downtimePerHour: { 1: 900, 2: 280, 3: 60, 4: 0 } },
  ...{ discountRatePct: 6, lifeYears: 12 },
  ...{ deliveryDays: 9, specialDeliveryDays: 45, repairDays: 8 },
};
