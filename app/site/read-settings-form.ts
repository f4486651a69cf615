import { IE_CLASSES, type SiteSettings } from '@/lib/plant/site-settings';
import { WORK_IDS, type WorkId } from '@/lib/plant/work';
import { signedNumber } from '../signed-number';
import { WORK_WORDS } from '../work-words';
import { hourField, type SettingsValues } from './settings-state';
import { downtimeField, SITE_FIGURES, type SiteFigure } from './site-figures';

type Problems = { path: string; says: string }[];

/** Reads the settings as people write them, or every problem at once. */
export function readSettingsForm(
  values: SettingsValues,
): { ok: true; settings: SiteSettings } | { ok: false; problems: Problems } {
  const problems: Problems = [];
  const typedIn = (path: string) => values[path] ?? '';
  const number = ({ name, label, min, max, isWhole, isNeeded }: Omit<SiteFigure, 'of' | 'unit'>): number | null => {
    const typed = typedIn(name);
    const refuse = (says: string) => problems.push({ path: name, says });
    if (typed === '') {
      if (isNeeded) refuse(`${label}: must have a figure.`);
      return null;
    }
    const read = signedNumber(typed, { min, max });
    if (!read.ok) for (const { says } of read.problems) refuse(`${label}: “${typed}” ${says}.`);
    else if (isWhole && !Number.isInteger(read.value)) refuse(`${label}: “${typed}” must be whole.`);
    else return read.value;
    return null;
  };
  const hours = WORK_IDS.map(
    (id) => [id, number({ name: hourField(id), label: nameOf(id), min: 0, max: 200, isNeeded: true })] as const,
  );
  const told = new Map(SITE_FIGURES.map((one) => [one.name, number(one)]));
  const of = (name: string) => told.get(name) ?? null;
  const currency = typedIn('currency').toUpperCase();
  if (currency !== '' && !/^[A-Z]{3}$/.test(currency))
    problems.push({ path: 'currency', says: 'Currency: must be three letters, such as EUR.' });
  if (currency === '' && SITE_FIGURES.some(({ name, unit }) => unit.startsWith('money') && of(name) !== null))
    problems.push({ path: 'currency', says: 'Currency: a price needs one, such as EUR.' });
  const typedClass = typedIn('unprintedClass');
  const unprintedClass = IE_CLASSES.find((one) => one === typedClass) ?? null;
  if (typedClass !== '' && unprintedClass === null)
    problems.push({ path: 'unprintedClass', says: `Class: must be one of ${IE_CLASSES.join(', ')}.` });
  const shimLimitMm = of('shimLimitMm');
  if (problems.length > 0 || shimLimitMm === null) return { ok: false, problems };
  return {
    ok: true,
    settings: {
      hours: Object.fromEntries(hours) as Record<WorkId, number>,
      ...{ shimLimitMm, unprintedClass, currency: currency === '' ? null : currency },
      ...{ hoursPerYear: of('hoursPerYear'), pricePerKwh: of('pricePerKwh') },
      energyPriceGrowthPct: of('energyPriceGrowthPct'),
      ...{ leastPowerFactor: of('leastPowerFactor'), pricePerKvarYear: of('pricePerKvarYear') },
      workPerHour: of('workPerHour'),
      downtimePerHour: {
        ...{ 1: of(downtimeField(1)), 2: of(downtimeField(2)), 3: of(downtimeField(3)), 4: of(downtimeField(4)) },
      },
      ...{ discountRatePct: of('discountRatePct'), lifeYears: of('lifeYears') },
      ...{ deliveryDays: of('deliveryDays'), specialDeliveryDays: of('specialDeliveryDays') },
      repairDays: of('repairDays'),
    },
  };
}

export const nameOf = (id: WorkId) => {
  const words = id === 'swap' ? 'every swap' : WORK_WORDS[id];
  return words.charAt(0).toUpperCase() + words.slice(1);
};
