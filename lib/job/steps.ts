import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Predicted } from './predicted';
import type { Step } from './step';
import { STEP_IDS } from './step-ids';
import { beforePower } from './steps/before-power';
import { beforeRestart } from './steps/before-restart';
import { lineUp } from './steps/line-up';
import { makeSafe } from './steps/make-safe';
import { running } from './steps/running';
import { takeOut } from './steps/take-out';

/**
 * What is heeded and read at this set with this motor, from isolation to hand-over, in the order of the ids. Common
 * practice, no source, but for the figures, which name theirs.
 */
export function stepsOf(set: PumpSet, motor: Motor, predicted: Predicted): Step[] {
  const steps = [
    ...makeSafe(set, motor),
    ...takeOut(set, motor),
    ...beforePower(set, motor, predicted),
    ...lineUp(set),
    ...beforeRestart(set, motor),
    ...running(predicted),
  ];
  return steps.sort((a, b) => STEP_IDS.indexOf(a.id) - STEP_IDS.indexOf(b.id));
}
