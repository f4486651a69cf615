import { ActionButton } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Choice } from '@/app/look/choice';
import { Field, SelectField, TextAreaField } from '@/app/look/field';
import { ProblemList } from '@/app/look/problem-list';
import { ReadingsForm } from '@/app/readings/readings-form';
import { SIGNED_OUT } from '@/app/signed-out';
import type { Predicted } from '@/lib/job/predicted';
import { NO_READINGS } from '@/lib/job/readings';
import type { Step } from '@/lib/job/step';
import { type SwapState, WHYS } from './swap-state';

export interface SwapFieldsProps {
  state: SwapState;
  tag: string;
  motor: string;
  motorOut: { motorId: string; number: string } | null;
  /** The set that gives the motor and stops for it. */
  stops: { setId: string; tag: string; service: string | null } | null;
  shelves: readonly { value: string; words: string }[];
  work: readonly { id: string; what: string; time: string }[];
  checks: readonly { criterion: string; name: string; says: string }[];
  isUnsuitable: boolean;
  /** What is heeded, ticked and read at the pump, and what readings are held against. */
  steps: readonly Step[];
  predicted: Predicted;
}

/** All that is asked of a swap, and what came of the last sending; it stands in a form of whoever sends it. */
export function SwapFields(props: SwapFieldsProps) {
  const { state, tag, motor, motorOut, stops, shelves, work, checks, isUnsuitable, steps, predicted } = props;
  const { values } = state;
  const problems = state.outcome === 'refused' ? state.problems : [];
  const wrong = (path: string) => problems.find((problem) => problem.path === path)?.says ?? null;
  return (
    <>
      {problems.length > 0 && (
        <div tabIndex={-1} ref={toFront}>
          <ProblemList problems={problems} />
        </div>
      )}
      {state.outcome === 'away' && (
        <p role="alert" className="problem-list" tabIndex={-1} ref={toFront}>
          {state.says}{' '}
          {state.says === SIGNED_OUT && (
            <a className="inline-act" href="/sign-in?to=/person" target="_blank" rel="noreferrer">
              Sign in
            </a>
          )}
        </p>
      )}
      <input type="hidden" name="key" value={values.key} />
      <input type="hidden" name="tag" value={tag} />
      <input type="hidden" name="motor" value={motor} />
      <input type="hidden" name="motorOutId" value={motorOut === null ? '' : motorOut.motorId} />
      <input type="hidden" name="fromSetId" value={stops === null ? '' : stops.setId} />
      {stops !== null && (
        <Choice
          legend={`${motor} comes out of ${stops.tag}`}
          name="stops"
          kind="many"
          options={[
            {
              value: 'yes',
              words: `${stops.tag}${stops.service === null ? '' : `, ${stops.service},`} stops, and may`,
            },
          ]}
          chosen={[values.stops]}
          error={wrong('stops')}
        />
      )}
      <Choice
        legend={motorOut === null ? 'Why does a motor go in?' : `Why did ${motorOut.number} come out?`}
        name="why"
        kind="one"
        options={WHYS.map((why) => ({ value: why, words: why }))}
        chosen={[values.why]}
        error={wrong('why')}
      />
      <Field
        label="In your own words"
        name="whyWords"
        defaultValue={values.whyWords}
        maxLength={150}
        autoComplete="off"
        required={false}
        error={wrong('whyWords')}
      />
      {motorOut !== null && (
        <>
          <Choice
            legend={`Where does ${motorOut.number} go?`}
            name="outTo"
            kind="one"
            options={[
              { value: 'at-repair', words: 'To repair' },
              { value: 'scrapped', words: 'To scrap' },
              ...(shelves.length === 0 ? [] : [{ value: 'on-shelf', words: 'To a shelf' }]),
            ]}
            chosen={[values.outTo]}
            error={wrong('outTo')}
          />
          {shelves.length > 0 && (
            <SelectField
              label="Shelf, if it goes to one"
              name="shelfId"
              empty="No shelf"
              options={shelves}
              defaultValue={values.shelfId}
              error={wrong('shelfId')}
            />
          )}
        </>
      )}
      {work.length > 0 && (
        <Choice
          legend="Work done"
          name="workDone"
          kind="many"
          options={work.map(({ id, what, time }) => ({ value: id, words: what, aside: time }))}
          chosen={values.workDone}
        />
      )}
      {checks.length > 0 && (
        <Choice
          legend="Checks cleared, and signed by you"
          name="checks"
          kind="many"
          options={checks.map(({ criterion, name, says }) => ({ value: criterion, words: `${name}: ${says}` }))}
          chosen={values.checks}
        />
      )}
      <ReadingsForm steps={steps} predicted={predicted} value={NO_READINGS} typed={values.readings} wrong={wrong} />
      <Field
        label="Shims under its feet now"
        name="shimsPresentMm"
        unit="mm"
        inputMode="decimal"
        autoComplete="off"
        defaultValue={values.shimsPresentMm}
        maxLength={24}
        hint="What was not measured stays empty."
        error={wrong('shimsPresentMm')}
      />
      <TextAreaField
        label={isUnsuitable ? 'Who decided that it goes in, and why?' : 'Note'}
        name="note"
        rows={3}
        maxLength={2_000}
        defaultValue={values.note}
        {...(!isUnsuitable && { required: false })}
        error={wrong('note')}
      />
      <ActionBar>
        <ActionButton>Record the swap</ActionButton>
      </ActionBar>
    </>
  );
}

/** What came of a sending stands at the top of the form, and its button at the bottom. */
const toFront = (element: HTMLElement | null) => element?.focus();
