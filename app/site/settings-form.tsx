'use client';

import { useActionState } from 'react';
import { IE_CLASSES } from '@/lib/plant/site-settings';
import { WORK_IDS } from '@/lib/plant/work';
import { ActionButton } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { Field, SelectField } from '../look/field';
import { ProblemList } from '../look/problem-list';
import { SectionHead } from '../look/section-head';
import { SIGNED_OUT } from '../signed-out';
import { nameOf } from './read-settings-form';
import { saveSettings } from './save-settings';
import { hourField, type SettingsState, type SettingsValues } from './settings-state';
import { SITE_SECTIONS, unitShown } from './site-figures';

/** What the site decides for itself. A client component, since only so is what was typed kept on a refusal. */
export function SettingsForm({ values, version }: { values: SettingsValues; version: number }) {
  const [state, send] = useActionState<SettingsState, FormData>(saveSettings, { outcome: 'asked', values, version });
  const problems = state.outcome === 'refused' ? state.problems : [];
  const now = state.outcome === 'stale' ? state.now : null;
  const wrongAt = (name: string): string | null => {
    const says = problems.find(({ path }) => path === name)?.says;
    if (says !== undefined) return says;
    const isOther = now !== null && now[name] !== state.values[name];
    return isOther ? `Somebody else has saved ${now[name] || 'nothing'} here.` : null;
  };
  const currency = state.values.currency || null;
  const field = (name: string, label: string, unit: string | null, hint?: string) => {
    return (
      <Field
        key={name}
        label={label}
        name={name}
        {...(unit !== null && { unit })}
        inputMode={name === 'currency' || name === 'energyPriceGrowthPct' ? 'text' : 'decimal'}
        autoComplete="off"
        maxLength={24}
        defaultValue={state.values[name] ?? ''}
        error={wrongAt(name)}
        {...(hint !== undefined && { hint })}
      />
    );
  };
  const classField = (
    <SelectField
      label="A motor whose plate prints no efficiency counts as"
      name="unprintedClass"
      empty="not known"
      options={IE_CLASSES.map((one) => ({ value: one, words: one }))}
      defaultValue={state.values.unprintedClass ?? ''}
      error={wrongAt('unprintedClass')}
      hint="IEC 60034-30-1; at 60 Hz IE2 is energy-efficient, IE3 premium (NEMA MG 1)."
    />
  );
  return (
    <form action={send} className="grow" noValidate key={JSON.stringify(state)}>
      {problems.length > 0 && (
        <div tabIndex={-1} ref={toFront}>
          <ProblemList problems={problems} />
        </div>
      )}
      {TOLD[state.outcome] !== undefined && (
        <p role="status" className="problem-list" tabIndex={-1} ref={toFront}>
          {TOLD[state.outcome]}
        </p>
      )}
      <input type="hidden" name="version" value={state.version} />
      <SectionHead title="Hours of work" aside="one pair, parts at hand" />
      <div className="two">{WORK_IDS.map((id) => field(hourField(id), nameOf(id), 'h'))}</div>
      {SITE_SECTIONS.map(({ title, figures }) => (
        <section key={title}>
          <SectionHead title={title} />
          <div className="two">
            {title === 'Energy' && field('currency', 'Currency', null, 'Three letters, such as EUR.')}
            {figures.map(({ name, label, unit, hint }) =>
              field(name, label, unit === '' ? null : unitShown(unit, currency), hint),
            )}
            {title === 'Energy' && classField}
          </div>
        </section>
      ))}
      <ActionBar>
        <ActionButton>Save</ActionButton>
      </ActionBar>
    </form>
  );
}

const TOLD: Partial<Record<SettingsState['outcome'], string>> = {
  saved: 'Saved. Every list reckons with these from now on; what was recorded before keeps its figures.',
  stale:
    'Somebody else has saved in between. Their figures stand under the fields that differ; send again to put yours.',
  away: 'The register’s database does not answer. Nothing was saved; what you typed stands below.',
  'signed-out': SIGNED_OUT,
};

const toFront = (element: HTMLElement | null) => element?.focus();
