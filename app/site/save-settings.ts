'use server';

import { revalidatePath } from 'next/cache';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { changeSiteSettings } from '@/lib/register/commands/change-site-settings';
import { oneLine } from '../paths';
import { refusedByRole } from '../refused-by-role';
import { whoDoes } from '../who-is-here';
import { readSettingsForm } from './read-settings-form';
import { SETTING_FIELDS, type SettingsState, type SettingsValues, valuesOf } from './settings-state';

/** Saves the site's settings as typed. What was typed stays in its fields, whatever comes of it. */
export async function saveSettings(before: SettingsState, form: FormData): Promise<SettingsState> {
  const values = typedIn(form);
  const version = Number(form.get('version'));
  const state = { values, version };
  const read = readSettingsForm(values);
  if (!Number.isSafeInteger(version)) return { ...before, outcome: 'refused', problems: [] };
  if (!read.ok) return { ...state, outcome: 'refused', problems: read.problems };
  try {
    const actor = await whoDoes('settings.edit');
    if (actor === null) return { ...state, outcome: 'signed-out' };
    const done = await changeSiteSettings(actor, version, read.settings);
    if (done.outcome === 'stale')
      return { values, version: done.version, outcome: 'stale', now: valuesOf(done.settings) };
    revalidatePath('/', 'layout');
    return { values: valuesOf(read.settings), version: done.version, outcome: 'saved' };
  } catch (error) {
    if (isDatabaseGone(error)) return { ...state, outcome: 'away' };
    const says = refusedByRole(error);
    if (says === null) throw error;
    return { ...state, outcome: 'refused', problems: [{ path: 'form', says }] };
  }
}

function typedIn(form: FormData): SettingsValues {
  return Object.fromEntries(
    SETTING_FIELDS.map((name) => {
      const value = form.get(name);
      return [name, typeof value === 'string' ? oneLine(value) : ''];
    }),
  );
}
