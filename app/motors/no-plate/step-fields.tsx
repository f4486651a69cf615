import {
  FaceSeenFields,
  LengthFields,
  ON_FACE,
  ON_FEET,
  ON_SHAFT,
  ToolChoice,
} from '@/app/frames/measure/measure-fields';
import { Choice } from '@/app/look/choice';
import { Field } from '@/app/look/field';
import type { StepId } from './steps';
import { ENCLOSURES, LEADS, POLES, type SeenName, type WalkAsked } from './walk-asked';

/** What a step asks for, as far as it asks for anything. */
export function StepFields({ step, asked }: { step: StepId; asked: WalkAsked }) {
  const { tape, typed, problems } = asked;
  const figure = (name: SeenName, label: string, unit: string, hint?: string) => (
    <Field
      {...{ label, name, unit }}
      {...(hint !== undefined && { hint })}
      inputMode="decimal"
      autoComplete="off"
      maxLength={20}
      defaultValue={typed[name] ?? null}
      error={problems.find(({ path }) => path === name)?.says ?? null}
    />
  );
  const choice = (name: SeenName, legend: string, options: readonly { value: string; words: string }[]) => (
    <Choice
      {...{ legend, name }}
      kind="one"
      chosen={[typed[name] ?? '']}
      options={[{ value: '', words: 'Not known' }, ...options]}
    />
  );
  const same = (values: readonly string[]) => values.map((value) => ({ value, words: value }));
  switch (step) {
    case 'look':
    case 'found':
      return null;
    case 'feet':
      return <LengthFields names={ON_FEET} asked={tape} />;
    case 'shaft':
      return (
        <>
          <LengthFields names={ON_SHAFT} asked={tape} />
          <ToolChoice asked={tape} />
        </>
      );
    case 'face':
      return (
        <>
          <FaceSeenFields asked={tape} />
          <LengthFields names={ON_FACE} asked={tape} />
        </>
      );
    case 'leads':
      return choice('leads', 'Leads that come out of the winding', same(LEADS));
    case 'speed':
      return (
        <>
          {figure('rpm', 'Speed under load', 'rpm', 'Or the pump’s speed, where the coupling is direct.')}
          {figure('hertz', 'Frequency at that moment', 'Hz', 'Of the supply, or what the drive shows.')}
          {choice('poles', 'Poles, found by the winding by a competent person', same(POLES))}
        </>
      );
    case 'ran':
      return (
        <>
          {figure('volts', 'Volts between lines', 'V')}
          {figure('amps', 'Amps, the greatest of the lines', 'A')}
        </>
      );
    case 'outside':
      return (
        <>
          {choice('enclosure', 'How is it cooled?', ENCLOSURES)}
          {figure('mass', 'Mass', tape.units === 'us' ? 'lb' : 'kg')}
        </>
      );
  }
}
