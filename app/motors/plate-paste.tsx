import type { Problem } from '@/lib/plant/reading';
import { ActionButton } from '../look/action';
import { TextAreaField } from '../look/field';
import { SectionHead } from '../look/section-head';

/** The whole plate as text, in any order: read into the fields below, and what was not understood said. */
export function PlatePaste({
  text,
  problems,
  unread,
}: {
  text: string;
  problems: readonly Problem[];
  unread: readonly string[];
}) {
  return (
    <section>
      <SectionHead title="The whole plate as text" aside="in any order, or leave it empty" />
      <form action="/motors/new">
        <TextAreaField
          label="What stands on the plate"
          name="plate"
          rows={4}
          maxLength={4_000}
          defaultValue={text}
          hint="Type or paste it as it stands, a line of the plate to a line."
        />
        <div className="mt-3 grid">
          <ActionButton second>Read it into the fields</ActionButton>
        </div>
      </form>
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
