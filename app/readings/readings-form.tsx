'use client';

import { type FormEvent, useState } from 'react';
import { SectionHead } from '@/app/look/section-head';
import type { Predicted } from '@/lib/job/predicted';
import { readingFindings } from '@/lib/job/reading-findings';
import { type ReadingTexts, readingsOf, textsFrom, textsOf } from '@/lib/job/reading-texts';
import type { Readings } from '@/lib/job/readings';
import { STAGE_WORDS, STAGES, type Step } from '@/lib/job/step';
import { StepField } from './step-field';

export interface ReadingsFormProps {
  steps: readonly Step[];
  predicted: Predicted;
  value: Readings;
  /** Told what stands in the fields, as far as it can be read, each time one changes. */
  onChange?: (readings: Readings) => void;
  /** What was typed before, where not all of it could be read: it is shown in place of `value`. */
  typed?: ReadingTexts;
  /** What is wrong with a field, by its name. */
  wrong?: (name: string) => string | null;
}

/**
 * The steps of a job to tick and fill, stage by stage, each with what its reading says at once. The fields have names, so
 * that a form around them is sent without script too. It needs neither network nor server.
 */
export function ReadingsForm({ steps, predicted, value, onChange, typed, wrong = () => null }: ReadingsFormProps) {
  const first = typed ?? textsOf(value);
  const [readings, setReadings] = useState(() => readingsOf(first).readings);
  const findings = readingFindings(readings, predicted);
  const take = (event: FormEvent<HTMLDivElement>) => {
    const now = readingsOf(textsIn(event.currentTarget)).readings;
    setReadings(now);
    onChange?.(now);
  };
  return (
    <div className="readings" onInput={take}>
      {STAGES.map((stage) => {
        const here = steps.filter((step) => step.stage === stage);
        if (here.length === 0) return null;
        return (
          <section key={stage}>
            <SectionHead title={STAGE_WORDS[stage]} />
            {here.map((step) => (
              <StepField
                key={step.id}
                step={step}
                first={first}
                amps={readings.amps}
                findings={findings}
                wrong={wrong}
              />
            ))}
          </section>
        );
      })}
    </div>
  );
}

/** What stands in the fields now. */
function textsIn(element: HTMLElement): ReadingTexts {
  const inputs = [...element.querySelectorAll('input')];
  const named = (name: string) => inputs.filter((input) => input.name === name);
  return textsFrom(
    (name) => {
      const [input] = named(name).filter(({ type, checked }) => type !== 'radio' || checked);
      return input === undefined ? '' : input.value;
    },
    (name) => named(name).flatMap(({ checked, value }) => (checked ? [value] : [])),
  );
}
