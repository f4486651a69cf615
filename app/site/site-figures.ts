import { CRITICALITIES, type SiteSettings } from '@/lib/plant/site-settings';

/** One figure that a site sets, with the bounds within which it is read. */
export interface SiteFigure {
  name: string;
  label: string;
  /** Behind the figure; `money` stands for the site's currency. */
  unit: string;
  min: number;
  max: number;
  isWhole?: true;
  isNeeded?: true;
  hint?: string;
  of: (settings: SiteSettings) => number | null;
}

const figureOf = <K extends keyof SiteSettings>(
  name: K,
  of: (settings: SiteSettings) => number | null,
  rest: Omit<SiteFigure, 'name' | 'of'>,
): SiteFigure => ({ name, of, ...rest });

export const LIMITS: readonly SiteFigure[] = [
  figureOf('shimLimitMm', (site) => site.shimLimitMm, {
    ...{ label: 'Shims, where the set states no limit', unit: 'mm', min: 0, max: 50, isNeeded: true },
  }),
];

export const ENERGY: readonly SiteFigure[] = [
  figureOf('hoursPerYear', (site) => site.hoursPerYear, {
    ...{ label: 'Hours run in a year', unit: 'h', min: 0, max: 8_784 },
    hint: 'Empty: yearly energy is not worked out.',
  }),
  figureOf('pricePerKwh', (site) => site.pricePerKwh, { label: 'Price of a kWh', unit: 'money', min: 0, max: 10 }),
  figureOf('energyPriceGrowthPct', (site) => site.energyPriceGrowthPct, {
    ...{ label: 'The price of energy rises by', unit: '% a year', min: -20, max: 50 },
    hint: 'Below zero: it falls.',
  }),
  figureOf('leastPowerFactor', (site) => site.leastPowerFactor, {
    ...{ label: 'Power factor above which reactive power is free', unit: '', min: 0.01, max: 1 },
    hint: 'As the supplier’s contract has it.',
  }),
  figureOf('pricePerKvarYear', (site) => site.pricePerKvarYear, {
    ...{ label: 'A kvar beyond it costs', unit: 'money a year', min: 0, max: 1e8 },
    hint: 'Empty: reactive power is told in kvar alone.',
  }),
];

export const MONEY: readonly SiteFigure[] = [
  figureOf('workPerHour', (site) => site.workPerHour, {
    ...{ label: 'An hour of work costs', unit: 'money', min: 0, max: 100_000 },
  }),
  ...CRITICALITIES.map(
    (criticality): SiteFigure => ({
      name: downtimeField(criticality),
      label: `An hour down, criticality ${criticality}`,
      ...{ unit: 'money', min: 0, max: 1e8 },
      ...(criticality === 1 && { hint: 'Stops the plant.' }),
      ...(criticality === 4 && { hint: 'Can wait.' }),
      of: ({ downtimePerHour }) => downtimePerHour[criticality],
    }),
  ),
  figureOf('discountRatePct', (site) => site.discountRatePct, {
    ...{ label: 'Money later is worth less by', unit: '% a year', min: 0, max: 50 },
    hint: 'The discount rate. Empty: no life-cycle cost is worked out.',
  }),
  figureOf('lifeYears', (site) => site.lifeYears, {
    ...{ label: 'A motor is reckoned with for', unit: 'years', min: 1, max: 40, isWhole: true },
  }),
];

const PUBLISHED = 'Empty: the times of the trade stand in its place, and say so.';

export const TIMES: readonly SiteFigure[] = [
  figureOf('deliveryDays', (site) => site.deliveryDays, {
    ...{ label: 'A bought standard motor is here in', unit: 'days', min: 0, max: 1_000, hint: PUBLISHED },
  }),
  figureOf('specialDeliveryDays', (site) => site.specialDeliveryDays, {
    ...{ label: 'One made to order', unit: 'days', min: 0, max: 1_000 },
    hint: `Washdown, area-classified, special voltage. ${PUBLISHED}`,
  }),
  figureOf('repairDays', (site) => site.repairDays, {
    ...{ label: 'A motor is back from repair in', unit: 'days', min: 0, max: 1_000, hint: PUBLISHED },
  }),
];

/** Under which title what stands. */
export const SITE_SECTIONS: readonly { title: string; figures: readonly SiteFigure[] }[] = [
  { title: 'Limits', figures: LIMITS },
  { title: 'Energy', figures: ENERGY },
  { title: 'Work, downtime and money', figures: MONEY },
  { title: 'Until a motor is here', figures: TIMES },
];

export const SITE_FIGURES: readonly SiteFigure[] = SITE_SECTIONS.flatMap(({ figures }) => figures);

export function downtimeField(criticality: number): string {
  return `downtime-${criticality}`;
}

/** The unit as it is shown, in the site's currency. */
export const unitShown = (unit: string, currency: string | null): string =>
  unit.replace('money', currency === null ? 'money' : currency);
