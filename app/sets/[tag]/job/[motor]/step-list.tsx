import { STAGE_WORDS, type Stage, type Step } from '@/lib/job/step';
import { UNEVEN_ABOVE_PCT } from '@/lib/standards/unbalance';

/** The steps of one stage on paper: a box each, and room to write in what is read. Null: the stage has none. */
export function StepList({ stage, steps }: { stage: Stage; steps: readonly Step[] }) {
  const here = steps.filter((step) => step.stage === stage);
  if (here.length === 0) return null;
  return (
    <section>
      <h2>{STAGE_WORDS[stage]}</h2>
      <ol className="steps">
        {here.map((step) => (
          <li key={step.id}>
            <span>
              {step.words}
              {step.asks.kind === 'amps' && <Amps phases={step.asks.phases} />}
            </span>
            <span className="value">
              <WriteIn step={step} />
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function WriteIn({ step: { id, asks } }: { step: Step }) {
  switch (asks.kind) {
    case 'value':
      return (
        <>
          <span className="blank" /> {asks.unit}
        </>
      );
    case 'rotation':
      return (
        <>
          <span className="either" /> right <span className="either" /> wrong
        </>
      );
    case 'box':
      return id === 'why-failed' ? <span className="blank" /> : null;
    case 'amps':
      return null;
  }
}

/** A line for each phase, and the unbalance to be worked out on paper. */
function Amps({ phases }: { phases: 1 | 3 }) {
  if (phases === 1)
    return (
      <span className="write">
        <span className="blank" /> A
      </span>
    );
  return (
    <>
      <span className="write">
        {['L1', 'L2', 'L3'].map((line) => (
          <span key={line}>
            {line} <span className="blank short" />
          </span>
        ))}
        A
      </span>
      <span className="write">
        <span>
          mean <span className="blank short" /> A
        </span>
        <span>
          farthest from it by <span className="blank short" /> A
        </span>
      </span>
      <span className="write">
        <span>
          100 × that / mean = <span className="blank short" /> %, at most {UNEVEN_ABOVE_PCT} %
        </span>
      </span>
    </>
  );
}
