import { figure } from '@/lib/units/figure';
import type { Predicted } from '../predicted';
import { runningBand } from '../running-band';
import { box, type Step } from '../step';

export function running(predicted: Predicted): Step[] {
  const phases = predicted.phases ?? 3;
  return [
    { id: 'running', stage: 'running', words: runningWords(predicted), asks: { kind: 'amps', phases } },
    box('running', 'hand-over', 'Handed over to those who run it'),
  ];
}

function runningWords({ amps, plateA, phases }: Predicted): string {
  const each = phases === 1 ? 'Running current' : 'Running current of each phase';
  if (amps !== null) {
    const { fromA, toA } = runningBand(amps);
    return `${each}: expect ${figure(amps, 1)} A, ${figure(fromA, 1)} to ${figure(toA, 1)}`;
  }
  return plateA === null
    ? `${each}: none is predicted`
    : `${each}: none is predicted, the plate has ${figure(plateA)} A`;
}
