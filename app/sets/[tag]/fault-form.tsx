import { ActionButton } from '@/app/look/action';
import { TextAreaField } from '@/app/look/field';
import { SectionHead } from '@/app/look/section-head';
import { reportFaultHere } from './report-fault-here';

/** "It has failed", in the person's own words. `problem` is what the last try was refused for. */
export function FaultForm({ tag, problem }: { tag: string; problem: string | null }) {
  return (
    <section className="screen-only" id="fault">
      <SectionHead title="It has failed" />
      <form action={reportFaultHere}>
        <input type="hidden" name="tag" value={tag} />
        <TextAreaField
          label="What is wrong?"
          name="says"
          rows={2}
          maxLength={2_000}
          required
          hint="What was seen, heard or smelt; which trip fell."
          error={problem === null ? null : 'Say in a few words what is wrong: 1 to 2,000 characters.'}
        />
        <div className="mt-3 grid">
          <ActionButton second>Report the fault</ActionButton>
        </div>
      </form>
    </section>
  );
}
