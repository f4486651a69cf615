import type { SiteSettings } from '@/lib/plant/site-settings';
import { WORK_IDS, type WorkId } from '@/lib/plant/work';
import { readNumber } from '@/lib/units/read-number';
import { WORK_WORDS } from '../work-words';
import { hourField, type SettingsValues } from './settings-state';

type Problems = { path: string; says: string }[];

/** Reads the settings as people write them, or every problem at once. */
export function readSettingsForm(
  values: SettingsValues,
): { ok: true; settings: SiteSettings } | { ok: false; problems: Problems } {
  const problems: Problems = [];
  const number = (path: string, name: string, max: number): number | null => {
    const typed = values[path] ?? '';
    if (typed === '') return null;
    const read = readNumber(typed, { min: 0, max });
    if (read.ok) return read.value;
    for (const { says } of read.problems) problems.push({ path, says: `${name}: “${typed}” ${says}.` });
    return null;
  };
  const needed = (path: string, name: string, max: number): number | null => {
    if ((values[path] ?? '') === '') problems.push({ path, says: `${name}: must have a figure.` });
    return number(path, name, max);
  };
  const hours = WORK_IDS.map((id) => [id, needed(hourField(id), nameOf(id), 200)] as const);
  const shimLimitMm = needed('shimLimitMm', 'Shims', 50);
  const hoursPerYear = number('hoursPerYear', 'Hours run in a year', 8_784);
  const pricePerKwh = number('pricePerKwh', 'Price of a kWh', 10);
  const currency = (values.currency ?? '').toUpperCase();
  if (currency !== '' && !/^[A-Z]{3}$/.test(currency))
    problems.push({ path: 'currency', says: 'Currency: must be three letters, such as EUR.' });
  if (pricePerKwh !== null && currency === '')
    problems.push({ path: 'currency', says: 'Currency: a price needs one, such as EUR.' });
  if (problems.length > 0 || shimLimitMm === null) return { ok: false, problems };
  return {
    ok: true,
    settings: {
      hours: Object.fromEntries(hours) as Record<WorkId, number>,
      shimLimitMm,
      hoursPerYear,
      pricePerKwh,
      currency: currency === '' ? null : currency,
    },
  };
}

export const nameOf = (id: WorkId) => {
  const words = id === 'swap' ? 'every swap' : WORK_WORDS[id];
  return words.charAt(0).toUpperCase() + words.slice(1);
};
