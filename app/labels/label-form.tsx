import type { FormProblem } from '@/lib/fields/read-form';
import type { KnownArea } from '@/lib/register/queries/areas';
import type { KnownStore } from '@/lib/register/queries/store-places';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';
import type { WhoseLabels } from './labels-asked';
import { onASheet, PAPERS } from './papers';
import { MOST_COPIES, type PrintAsked } from './print-asked';

/** Whose labels, on which paper, from which place: asked by the address, without script. */
export function LabelForm({
  whose,
  chosen,
  print,
  problems,
  areas,
  stores,
}: {
  whose: WhoseLabels;
  /** What was chosen elsewhere, in words. */
  chosen: string;
  print: PrintAsked;
  problems: readonly FormProblem[];
  areas: readonly KnownArea[];
  stores: readonly KnownStore[];
}) {
  const { paper, start, copies } = print;
  const wrong = (path: string) => problems.find((problem) => problem.path === path)?.says ?? null;
  return (
    <form action="/labels" className="screen-only">
      {whose.kept.map(([name, value]) => (
        <input key={`${name} ${value}`} type="hidden" name={name} value={value} />
      ))}
      <SelectField
        label="Labels of"
        name="which"
        empty={chosen}
        options={[
          { value: 'sets', words: 'all sets' },
          ...areas.map(({ areaId, name }) => ({ value: `area ${areaId}`, words: `sets of ${name}` })),
          { value: 'motors', words: 'all motors' },
          ...stores.map(({ storeId, name }) => ({ value: `store ${storeId}`, words: `motors in ${name}` })),
        ]}
        defaultValue={whose.which}
      />
      <SelectField
        label="Paper"
        name="paper"
        options={PAPERS.map(({ id, words }) => ({ value: id, words }))}
        defaultValue={paper.id}
      />
      <div className="two">
        {onASheet(paper) > 1 && (
          <Field
            label="First label"
            name="start"
            inputMode="numeric"
            defaultValue={start}
            maxLength={3}
            autoComplete="off"
            hint={`1 to ${onASheet(paper)}, counted along the rows`}
            error={wrong('start')}
          />
        )}
        <Field
          label="Copies of each"
          name="copies"
          inputMode="numeric"
          defaultValue={copies}
          maxLength={2}
          autoComplete="off"
          hint={`1 to ${MOST_COPIES}`}
          error={wrong('copies')}
        />
      </div>
      <div className="mt-4 grid">
        <ActionButton second>Show the labels</ActionButton>
      </div>
      {onASheet(paper) > 1 && <Places print={print} />}
    </form>
  );
}

/** The sheet in small: where the first label goes. */
function Places({ print: { paper, start } }: { print: PrintAsked }) {
  return (
    <fieldset className="field">
      <legend>Or press where the first label goes</legend>
      <div className="label-places" style={{ gridTemplateColumns: `repeat(${paper.columns}, auto)` }}>
        {Array.from({ length: onASheet(paper) }, (_, place) => place + 1).map((place) => (
          <button
            key={place}
            type="submit"
            name="first"
            value={place}
            className={place < start ? 'used' : undefined}
            aria-pressed={place === start}
            aria-label={`Begin at label ${place}`}
          >
            {place}
          </button>
        ))}
      </div>
      <p className="hint label">Dashed places stay free: labels were taken from them before.</p>
    </fieldset>
  );
}
