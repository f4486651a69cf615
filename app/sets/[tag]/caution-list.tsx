import { SectionHead } from '@/app/look/section-head';
import { STAGE_WORDS, STAGES, type Step } from '@/lib/job/step';
import { WHO_DECIDES } from '@/lib/job/who-decides';

/** The steps of a job as they are heeded, stage by stage, and who decides. */
export function CautionList({ steps }: { steps: readonly Step[] }) {
  return (
    <>
      {STAGES.map((stage) => {
        const here = steps.filter((step) => step.stage === stage);
        if (here.length === 0) return null;
        return (
          <section key={stage}>
            <SectionHead title={STAGE_WORDS[stage]} />
            <ul className="cautions">
              {here.map(({ id, words }) => (
                <li key={id}>{words}.</li>
              ))}
            </ul>
          </section>
        );
      })}
      <p className="pt-3">{WHO_DECIDES}</p>
    </>
  );
}
