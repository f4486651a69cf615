'use client';

import { useActionState } from 'react';
import { WORK_IDS } from '@/lib/plant/work';
import { ActionButton } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { Field } from '../look/field';
import { ProblemList } from '../look/problem-list';
import { SectionHead } from '../look/section-head';
import { SIGNED_OUT } from '../signed-out';
import { nameOf } from './read-settings-form';
import { saveSettings } from './save-settings';
import { hourField, type SettingsState, type SettingsValues } from './settings-state';

/** What the site decides for itself. A client component, since only so is what was typed kept on a refusal. */
export function SettingsForm({ values, version }: { values: SettingsValues; version: number }) {
  const [state, send] = useActionState<SettingsState, FormData>(saveSettings, { outcome: 'asked', values, version });
  const problems = state.outcome === 'refused' ? state.problems : [];
  const now = state.outcome === 'stale' ? state.now : null;
  const field = (name: string, label: string, unit: string | null, hint?: string) => {
    const says = problems.find(({ path }) => path === name)?.says ?? null;
    const other =
      now !== null && now[name] !== state.values[name]
        ? `Somebody else has saved ${now[name] || 'nothing'} here.`
        : null;
    return (
      <Field
        key={name}
        label={label}
        name={name}
        {...(unit !== null && { unit })}
        inputMode={name === 'currency' ? 'text' : 'decimal'}
        autoComplete="off"
        maxLength={24}
        defaultValue={state.values[name] ?? ''}
        error={says ?? other}
        {...(hint !== undefined && { hint })}
      />
    );
  };
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
      <SectionHead title="Limits and prices" />
      <div className="two">
        {field('shimLimitMm', 'Shims, where the set states no limit', 'mm')}
        {field('hoursPerYear', 'Hours run in a year', 'h', 'Empty: yearly energy is not worked out.')}
        {field('pricePerKwh', 'Price of a kWh', '/kWh')}
        {field('currency', 'Currency', null, 'Three letters, such as EUR.')}
      </div>
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
