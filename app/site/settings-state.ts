import type { SiteSettings } from '@/lib/plant/site-settings';
import { WORK_IDS } from '@/lib/plant/work';
import { figure } from '@/lib/units/figure';

/** Every field of the form by its name, as it was typed. */
export type SettingsValues = Record<string, string>;

export type SettingsState = { values: SettingsValues; version: number } & (
  | { outcome: 'asked' | 'saved' | 'away' | 'signed-out' }
  | { outcome: 'refused'; problems: { path: string; says: string }[] }
  /** Somebody saved in between; `now` is what stands. */
  | { outcome: 'stale'; now: SettingsValues }
);

export const LIMITS = ['shimLimitMm', 'hoursPerYear', 'pricePerKwh', 'currency'] as const;
export const hourField = (id: string) => `hours-${id}`;

/** The settings as the fields show them. */
export function valuesOf(settings: SiteSettings): SettingsValues {
  const text = (value: number | string | null) =>
    value === null ? '' : typeof value === 'string' ? value : figure(value, 4);
  return {
    ...Object.fromEntries(WORK_IDS.map((id) => [hourField(id), text(settings.hours[id])])),
    ...Object.fromEntries(LIMITS.map((name) => [name, text(settings[name])])),
  };
}
