import { contextOf, type JudgedBy } from '@/lib/matching/context';
import type { Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Connection, connectionOf } from './connection/connection-of';
import { type Predicted, predictedOf } from './predicted';
import { quantitiesOf } from './quantities';
import type { Quantity } from './quantities/quantity';
import type { Step } from './step';
import { stepsOf } from './steps';

/** What a job sheet and its readings are made of, for one motor into one set. */
export interface Job {
  steps: Step[];
  predicted: Predicted;
  quantities: Quantity[];
  connection: Connection;
}

export function jobOf(set: PumpSet, motor: Motor, findings: readonly Finding[], by: JudgedBy): Job {
  const predicted = predictedOf(set, motor, by);
  return {
    predicted,
    steps: stepsOf(set, motor, predicted),
    quantities: quantitiesOf(set, motor, findings, by),
    connection: connectionOf(set, motor, contextOf(set, motor, by)),
  };
}
