import { ProblemList } from '@/app/look/problem-list';
import { StepFields } from './step-fields';
import { indexOf, STEP_WORDS, STEPS, type StepId } from './steps';
import { asksFor, type WalkAsked } from './walk-asked';
import { LEADS_SAY, ranSays, speedSays } from './what-it-says';

/** One step: what it tells, what to mind, what it asks, and the ways on and back, which both keep what was typed. */
export function StepForm({ step, asked }: { step: StepId; asked: WalkAsked }) {
  const { tells, mind } = STEP_WORDS[step];
  const at = indexOf(step);
  const [before, after] = [STEPS[at - 1], STEPS[at + 1]];
  const own = asked.problems.filter((problem) => problem.step === step);
  const others = asked.problems.filter((problem) => problem.step !== step);
  return (
    <form action="/motors/no-plate" noValidate>
      <ProblemList problems={own} />
      {others.length > 0 && (
        <p className="problem-list">
          {others.map(({ says }) => says).join(' ')} The step “{STEPS[indexOf(others[0]?.step ?? step)]?.title}” asks
          for it.
        </p>
      )}
      <p className="pt-3">
        <b>{step === 'look' ? 'What may save the work' : 'What it tells'}</b>
      </p>
      <ul className="told dashed">
        {tells.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className="problem-list">
        <ul className="told">
          {mind.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
      <Carried step={step} asked={asked} />
      <StepFields step={step} asked={asked} />
      <Answer step={step} asked={asked} />
      <div className="mt-6 grid gap-2">
        {after !== undefined && (
          <button className="action" type="submit" name="step" value={after.id}>
            {after.id === 'found' ? 'What is known' : `Next: ${after.title.toLowerCase()}`}
          </button>
        )}
        {before !== undefined && (
          <button className="second" type="submit" name="step" value={before.id}>
            Back: {before.title.toLowerCase()}
          </button>
        )}
      </div>
    </form>
  );
}

/** What the other steps told goes with this one. */
function Carried({ step, asked }: { step: StepId; asked: WalkAsked }) {
  const own = asksFor(step);
  return asked.carried
    .filter(([name]) => !own.includes(name))
    .map(([name, value]) => <input key={name} type="hidden" name={name} value={value} />);
}

/** What was answered in this step says at once what it means. */
function Answer({ step, asked }: { step: StepId; asked: WalkAsked }) {
  const says =
    step === 'leads' && asked.leads !== null
      ? LEADS_SAY[asked.leads]
      : step === 'speed'
        ? speedSays(asked)
        : step === 'ran'
          ? ranSays(asked)
          : null;
  return says ? <p className="pt-3">{says}</p> : null;
}
