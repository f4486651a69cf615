import { MEASURABLE, type Measurable } from '@/lib/standards/measured/misfit';
import { Choice } from '../../look/choice';
import { Field } from '../../look/field';
import type { MeasuredAsked } from './measured-asked';
import { MEASURED_WORDS } from './measured-words';

export const ON_FEET: readonly Measurable[] = MEASURABLE.slice(0, 4);
export const ON_SHAFT: readonly Measurable[] = MEASURABLE.slice(4, 7);
export const ON_FACE: readonly Measurable[] = MEASURABLE.slice(7);

/** Lengths to be typed as they are read off. */
export function LengthFields({ names, asked }: { names: readonly Measurable[]; asked: MeasuredAsked }) {
  return names.map((name) => (
    <Field
      key={name}
      label={MEASURED_WORDS[name].label}
      name={name}
      unit={asked.units === 'us' ? 'in' : 'mm'}
      hint={MEASURED_WORDS[name].hint}
      defaultValue={asked.typed[name] ?? null}
      autoComplete="off"
      maxLength={40}
      error={errorOf(asked, name)}
    />
  ));
}

/** What is seen of the shaft end, and counted. */
export function FaceSeenFields({ asked }: { asked: MeasuredAsked }) {
  return (
    <>
      <Choice
        legend="Face at the shaft end"
        name="face"
        kind="one"
        chosen={[asked.seen.face ?? '']}
        options={[
          { value: '', words: 'Not looked at yet' },
          { value: 'none', words: 'None: it stands on feet alone' },
          { value: 'tapped', words: 'Its holes are threaded: bolts come from the pump' },
          { value: 'through', words: 'Its holes go through: bolts come from the motor' },
        ]}
      />
      <Field
        label="Holes in the face"
        name="faceHoles"
        inputMode="numeric"
        autoComplete="off"
        maxLength={3}
        defaultValue={asked.seen.holes}
        hint="Count them: four or eight."
        error={errorOf(asked, 'faceHoles')}
      />
    </>
  );
}

/** What it was measured with. */
export function ToolChoice({ asked: { tool } }: { asked: MeasuredAsked }) {
  return (
    <Choice
      legend="Measured with"
      name="tool"
      kind="one"
      chosen={[tool]}
      options={[
        { value: 'tape', words: 'A tape', aside: '± 1.6 mm, 1/16 in' },
        { value: 'caliper', words: 'A caliper at shaft and rims', aside: '± 0.15 mm' },
      ]}
    />
  );
}

const errorOf = ({ problems }: MeasuredAsked, name: string) => problems.find(({ path }) => path === name)?.says ?? null;
