import type { ReactNode } from 'react';
import type { Units } from '@/lib/fields/field';
import { MEASURABLE, type Measurable } from '@/lib/standards/measured/misfit';
import { ActionButton } from '../../look/action';
import { Choice } from '../../look/choice';
import { Field } from '../../look/field';
import { ProblemList } from '../../look/problem-list';
import { MEASURED_WORDS, type MeasuredAsked } from './measured-asked';

const FEET: readonly Measurable[] = MEASURABLE.slice(0, 4);
const SHAFT: readonly Measurable[] = MEASURABLE.slice(4, 7);
const FACE: readonly Measurable[] = MEASURABLE.slice(7);

/** What was measured, in the order in which it is done; the answer is the same page. */
export function MeasureForm({
  asked,
  units,
  action,
  children,
}: {
  asked: MeasuredAsked;
  units: Units;
  action: string;
  children?: ReactNode;
}) {
  const field = (name: Measurable) => (
    <Field
      key={name}
      label={MEASURED_WORDS[name].label}
      name={name}
      unit={units === 'us' ? 'in' : 'mm'}
      hint={MEASURED_WORDS[name].hint}
      defaultValue={asked.typed[name] ?? null}
      inputMode="text"
      autoComplete="off"
      maxLength={40}
      error={asked.problems.find(({ path }) => path === name)?.says ?? null}
    />
  );
  return (
    <form action={action} className="max-w-phone">
      <ProblemList problems={asked.problems} />
      {children}
      <fieldset>
        <legend className="group">Feet</legend>
        {FEET.map(field)}
      </fieldset>
      <fieldset>
        <legend className="group">Shaft</legend>
        {SHAFT.map(field)}
      </fieldset>
      <Choice
        legend="Face at the shaft end"
        name="face"
        kind="one"
        chosen={[asked.face ?? '']}
        options={[
          { value: '', words: 'Not looked at yet' },
          { value: 'none', words: 'None: it stands on feet alone' },
          { value: 'tapped', words: 'Its holes are tapped', aside: 'bolts go in from the pump' },
          { value: 'through', words: 'Its holes go through', aside: 'bolts go in from the motor' },
        ]}
      />
      <fieldset>
        <legend className="group">Face, where there is one</legend>
        {FACE.map(field)}
      </fieldset>
      <Choice
        legend="Measured with"
        name="tool"
        kind="one"
        chosen={[asked.tool]}
        options={[
          { value: 'tape', words: 'A tape', aside: 'to 1.5 mm' },
          { value: 'caliper', words: 'A caliper at shaft and rims', aside: 'to 0.1 mm' },
        ]}
      />
      <div className="mt-3 grid">
        <ActionButton>Which frames can it be?</ActionButton>
      </div>
    </form>
  );
}
