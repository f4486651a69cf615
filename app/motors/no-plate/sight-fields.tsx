import { Choice } from '@/app/look/choice';
import { Field } from '@/app/look/field';
import { ENCLOSURES, type SightAsked } from './told-by-sight';

/** What is seen and counted before a tape is taken. */
export function SightFields({ sight }: { sight: SightAsked }) {
  const { typed } = sight;
  return (
    <>
      <Choice
        legend="How is it cooled?"
        name="enclosure"
        kind="one"
        chosen={[typed.enclosure ?? '']}
        options={[{ value: '', words: 'Not looked at yet' }, ...ENCLOSURES]}
      />
      <Choice
        legend="How many leads come into the box?"
        name="leads"
        kind="one"
        chosen={[typed.leads ?? '']}
        options={[
          { value: '', words: 'Not looked at yet' },
          ...['3', '6', '9', '12'].map((value) => ({ value, words: value })),
        ]}
      />
      <Field
        label="Speed under load, if it still turns"
        name="rpm"
        unit="rpm"
        inputMode="decimal"
        defaultValue={typed.rpm ?? null}
        autoComplete="off"
        maxLength={10}
        hint="By a stroboscope or a reflecting mark, guard on. What the pump turned at, where the coupling is direct."
      />
      <Choice
        legend="Frequency of the supply"
        name="hertz"
        kind="one"
        chosen={[typed.hertz ?? '']}
        options={[
          { value: '', words: 'Not known' },
          { value: '50', words: '50 Hz' },
          { value: '60', words: '60 Hz' },
        ]}
      />
    </>
  );
}
