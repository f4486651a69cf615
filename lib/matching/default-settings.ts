import type { SiteSettings } from '@/lib/plant/site-settings';

/**
 * What a site starts from until it sets its own. Hours are common practice, no source: one competent person or pair
 * with parts at hand, without travel, cleaning or waiting. Prices, rates and times of delivery are the site's to tell.
 */
export const defaultSettings: SiteSettings = {
  hours: {
    swap: 2,
    shims: 0.5, // estimates run from 0.5 to 1.5
    'ground-block': 2.5, // 1.5 to 4
    'transition-base': 4, // 2 to 6
    'slot-or-redrill': 2.5, // 1 to 4
    'spacer-coupling': 1.5,
    'move-base': 4,
    bushing: 0.75, // 0.5 to 1.5
    sleeve: 1, // 0.5 to 1.5
    'new-hub': 1.25, // 0.5 to 2
    rebore: 2, // 0.5 to 2, at the long end: the hub goes to a lathe
    'quill-bushing': 2, // 1 to 3
    'step-key': 0.5,
    'terminal-box': 1.5, // 1 to 4
    'rewire-starter': 2,
    'power-factor-capacitor': 1,
    overload: 0.25,
    'drive-settings': 0.5,
    'drive-filter': 3,
    sheave: 2, // 1 to 3
    'belt-tension': 0.5,
    'auxiliary-wiring': 1,
    'reverse-rotation': 0.25,
    'spare-test': 0.5,
  },
  pricePerKwh: null,
  currency: null,
  hoursPerYear: null,
  shimLimitMm: 6, // common practice: loose shims up to about 6 mm, a ground block above
  workPerHour: null,
  downtimePerHour: { 1: null, 2: null, 3: null, 4: null },
  discountRatePct: null,
  lifeYears: null,
  energyPriceGrowthPct: null,
  unprintedClass: null,
  leastPowerFactor: null,
  pricePerKvarYear: null,
  deliveryDays: null,
  specialDeliveryDays: null,
  repairDays: null,
};
