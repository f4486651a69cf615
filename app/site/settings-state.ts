import type { SiteSettings } from '@/lib/plant/site-settings';
import { WORK_IDS } from '@/lib/plant/work';
import { figure } from '@/lib/units/figure';
import { SITE_FIGURES } from './site-figures';

/** Every field of the form by its name, as it was typed. */
export type SettingsValues = Record<string, string>;

export type SettingsState = { values: SettingsValues; version: number } & (
  | { outcome: 'asked' | 'saved' | 'away' | 'signed-out' }
  | { outcome: 'refused'; problems: { path: string; says: string }[] }
  /** Somebody saved in between; `now` is what stands. */
  | { outcome: 'stale'; now: SettingsValues }
);

/** Told by a word, not by a figure. */
export const WORDS = ['currency', 'unprintedClass'] as const;
export const hourField = (id: string) => `hours-${id}`;

export const SETTING_FIELDS: readonly string[] = [
  ...WORK_IDS.map(hourField),
  ...SITE_FIGURES.map(({ name }) => name),
  ...WORDS,
];

/** The settings as the fields show them. */
export function valuesOf(settings: SiteSettings): SettingsValues {
  const text = (value: number | null) => (value === null ? '' : figure(value, 4));
  return {
    ...Object.fromEntries(WORK_IDS.map((id) => [hourField(id), text(settings.hours[id])])),
    ...Object.fromEntries(SITE_FIGURES.map(({ name, of }) => [name, text(of(settings))])),
    ...Object.fromEntries(WORDS.map((name) => [name, settings[name] === null ? '' : settings[name]])),
  };
}
