import Form from 'next/form';
import type { Problem } from '@/lib/plant/reading';
import { ActionButton } from '../look/action';
import { TextAreaField } from '../look/field';
import { SectionHead } from '../look/section-head';

const FORM = 'plate-form';

/** It stands by itself, since a form holds no other: its field is among those of the motor, and named as its own. */
export function PlatePasteForm() {
  return <Form id={FORM} action="/motors/new" />;
}

/** The whole plate as text, in any order: read into the fields below, and what was not understood said. */
export function PlatePaste({
  text,
  onText,
  problems,
  unread,
}: {
  text: string;
  onText: (text: string) => void;
  problems: readonly Problem[];
  unread: readonly string[];
}) {
  return (
    <section>
      <SectionHead title="The whole plate as text" aside="in any order, or leave it empty" />
      <TextAreaField
        form={FORM}
        label="What stands on the plate"
        name="plate"
        rows={4}
        maxLength={4_000}
        defaultValue={text}
        onText={onText}
        hint="Type or paste it as it stands, a line of the plate to a line."
      />
      <div className="mt-3 grid">
        <ActionButton second form={FORM}>
          Read it into the fields
        </ActionButton>
      </div>
      {(problems.length > 0 || unread.length > 0) && (
        <ul className="problem-list" role="status">
          {problems.map(({ path, value, says }) => (
            <li key={`${path} ${says}`}>
              <bdi>{value === null ? path : `“${value}”`}</bdi> {says}.
            </li>
          ))}
          {unread.map((line) => (
            <li key={line}>
              Not understood: <bdi>{line}</bdi>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
