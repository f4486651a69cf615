import { Choice } from '@/app/look/choice';
import { Field } from '@/app/look/field';
import type { About, ReadingFinding } from '@/lib/job/reading-finding';
import { AMPS_FIELDS, type ReadingTexts } from '@/lib/job/reading-texts';
import type { PhaseAmps } from '@/lib/job/readings';
import type { Step } from '@/lib/job/step';
import { allThree, meanOf, unbalancePct } from '@/lib/standards/unbalance';
import { figure } from '@/lib/units/figure';
import { SaidNow } from './said-now';

interface StepFieldProps {
  step: Step;
  /** What the fields hold at first. */
  first: ReadingTexts;
  amps: PhaseAmps;
  findings: readonly ReadingFinding[];
  wrong: (name: string) => string | null;
}

/** One step: a box to tick, or what is read there and what it says. */
export function StepField({ step, first, amps, findings, wrong }: StepFieldProps) {
  const { id, words, asks } = step;
  const said = (...abouts: About[]) => <SaidNow findings={findings.filter(({ about }) => abouts.includes(about))} />;
  switch (asks.kind) {
    case 'box':
      return (
        <label className="tick">
          <input type="checkbox" name="ticked" value={id} defaultChecked={first.ticked.includes(id)} />
          <span>{words}</span>
        </label>
      );
    case 'value':
      return (
        <>
          <Field
            label={asks.name}
            name={asks.field}
            unit={asks.unit}
            hint={words}
            defaultValue={first[asks.field]}
            error={wrong(asks.field)}
            {...FIGURE}
          />
          {said(ABOUT[asks.field])}
        </>
      );
    case 'rotation':
      return (
        <>
          <Choice
            legend={words}
            name="rotation"
            kind="one"
            options={[
              { value: 'right', words: 'It turns the right way' },
              { value: 'wrong', words: 'It turns the wrong way' },
              { value: '', words: 'Rotation not checked yet' },
            ]}
            chosen={[first.rotation]}
            error={wrong('rotation')}
          />
          {said('rotation')}
        </>
      );
    case 'amps':
      return (
        <fieldset className="field">
          <legend>{words}</legend>
          <div className={asks.phases === 1 ? undefined : 'three'}>
            {AMPS_FIELDS.slice(0, asks.phases).map((name, i) => (
              <Field
                key={name}
                label={asks.phases === 1 ? 'Running' : `L${i + 1}`}
                name={name}
                unit="A"
                defaultValue={first[name]}
                error={wrong(name)}
                {...FIGURE}
              />
            ))}
          </div>
          <Unbalance amps={amps} />
          {said('running-current', 'current-unbalance')}
        </fieldset>
      );
  }
}

const FIGURE = { inputMode: 'decimal', autoComplete: 'off', maxLength: 24 } as const;

const ABOUT = {
  insulationMohm: 'insulation',
  overloadA: 'overload',
  softFootMm: 'soft-foot',
  offsetMm: 'offset',
  gapMmPer100: 'gap',
} as const;

function Unbalance({ amps }: { amps: PhaseAmps }) {
  const three = allThree(amps);
  const pct = three === null ? null : unbalancePct(three);
  return (
    <p className="pt-2 figure-line" role="status">
      {three !== null && pct !== null && `Mean ${figure(meanOf(three), 1)} A, uneven by ${figure(pct, 1)} %`}
    </p>
  );
}
