import type { ReadingValue } from './readings';
import type { StepId } from './step-ids';

/** Where in the job a step stands, in order. */
export const STAGES = ['make-safe', 'take-out', 'before-power', 'line-up', 'before-restart', 'running'] as const;
export type Stage = (typeof STAGES)[number];

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  'make-safe': 'Make safe',
  'take-out': 'Take out',
  'before-power': 'Before power',
  'line-up': 'Line up',
  'before-restart': 'Before restart',
  running: 'Run and hand over',
};

/** What is told of a step besides its box: a value in its unit, which way it turned, or the amps of each phase. */
export type Asks =
  | { kind: 'box' }
  | { kind: 'value'; field: ReadingValue; name: string; unit: string }
  | { kind: 'rotation' }
  | { kind: 'amps'; phases: 1 | 3 };

export interface Step {
  id: StepId;
  stage: Stage;
  words: string;
  asks: Asks;
}

export const box = (stage: Stage, id: StepId, words: string): Step => ({ id, stage, words, asks: { kind: 'box' } });

export const value = (
  stage: Stage,
  id: StepId,
  words: string,
  field: ReadingValue,
  name: string,
  unit: string,
): Step => ({ id, stage, words, asks: { kind: 'value', field, name, unit } });
