import { describe, expect, test } from 'vitest';
import { type Doubt, RULES, type RuleId } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { publishedPlates } from '../../bench/published-plates';

/**
 * Plates put together from the printed tables alone must pass: what a rule raises on them is a false alarm. A rule may
 * raise as many as stand here, each with its reason; every other none.
 */
const ALLOWED: Partial<Record<RuleId, { wrong: number; doubtful: number }>> = {};

const published = publishedPlates();
const raised = published.flatMap(({ motors }) =>
  motors.flatMap((motor) => doubtsOfMotor(motor).map((doubt) => ({ motor, doubt }))),
);
const told = (grade: Doubt['grade'], rule: RuleId) =>
  raised
    .filter(({ doubt }) => doubt.rule === rule && doubt.grade === grade)
    .map(({ motor, doubt }) => `${motor.id}: ${doubt.says}`);

test('the printed tables make some thousands of plates, with every table among them', () => {
  expect(published.map(({ motors }) => motors.length).every((many) => many > 25)).toBe(true);
  expect(published.reduce((sum, { motors }) => sum + motors.length, 0)).toBeGreaterThan(4_000);
});

describe.each(RULES)('%s', (rule) => {
  test('raises no more on published plates than is allowed it', () => {
    expect(told('wrong', rule).slice(ALLOWED[rule]?.wrong ?? 0)).toEqual([]);
    expect(told('doubtful', rule).slice(ALLOWED[rule]?.doubtful ?? 0)).toEqual([]);
  });
});
