import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { candidatesPath, motorPath } from '@/app/paths';
import { AMPS_FIELDS } from '@/lib/job/reading-texts';
import type { SwapState } from './swap-state';

/** Somebody was first: who, when, what was typed, and the list again. */
export function SwapTaken({
  tag,
  motor,
  state,
}: {
  tag: string;
  motor: string;
  state: SwapState & { outcome: 'taken' };
}) {
  const { values, says, when } = state;
  const typed = [
    { label: 'Why', value: [values.why, values.whyWords].filter((words) => words !== '').join(': ') },
    { label: 'Insulation, MΩ', value: values.readings.insulationMohm },
    { label: 'Overload, A', value: values.readings.overloadA },
    {
      label: 'Running, A',
      value: AMPS_FIELDS.map((name) => values.readings[name])
        .filter((text) => text !== '')
        .join(', '),
    },
    { label: 'Shims, mm', value: values.shimsPresentMm },
    { label: 'Note', value: values.note },
  ].filter(({ value }) => value !== '');
  return (
    <>
      <div role="alert" className="problem-list">
        <p>
          <b>Somebody was first.</b>
        </p>
        <p>
          <bdi>{says}</bdi>
          {when !== null && ` That was on ${when}.`} Your swap was not recorded, and nothing was moved.
        </p>
      </div>
      {typed.length > 0 && (
        <>
          <SectionHead title="What you had typed" />
          <Facts rows={typed.map(({ label, value }) => ({ label, value: <bdi>{value}</bdi> }))} />
        </>
      )}
      <ActionBar>
        <Action href={candidatesPath(tag)}>What can go in now?</Action>
        <Action href={motorPath(motor)} second>
          The motor
        </Action>
      </ActionBar>
    </>
  );
}
