import { describe, expect, test } from 'vitest';
import { readPlate } from '@/lib/nameplate/read-plate';
import { motor } from '@/lib/plant/motor';
import { type Doubt, RULES, type RuleId } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { doubtsOfSet } from '@/lib/plausibility/doubts-of-set';
import { doubtsOfSite } from '@/lib/plausibility/doubts-of-site';
import { demoMotors, demoSets, demoSite } from '../../bench/demo-plant';
import { publishedPlates } from '../../bench/published-plates';
import { publishedSets } from '../../bench/published-sets';
import { iecPlates } from '../nameplate/plates-iec';
import { nemaPlates } from '../nameplate/plates-nema';

/**
 * Plates put together from the printed tables alone must pass, and so must sets made for them: what a rule raises on them
 * is a false alarm. A rule may raise as many as stand here, each with its reason; every other none.
 */
const ALLOWED: Partial<Record<RuleId, { wrong: number; doubtful: number }>> = {};

const published = publishedPlates();
const sets = publishedSets();
const told = (of: string) => (doubt: Doubt) => ({ of, ...doubt });
const raised = [
  ...published.flatMap(({ motors }) => motors.flatMap((motor) => doubtsOfMotor(motor).map(told(motor.id)))),
  ...sets.flatMap(({ set, motor }) => doubtsOfSet(set, motor).map(told(set.tag))),
];

/** Plates as makers stamp them, invented to be read (test/nameplate): those that rightly raise something. */
const STAMPED: readonly string[] = [
  'a flange beside a frame on one line: frame-name',
  "a maker's type that ends in a frame is read and said: speed", // 1500 rpm at 50 Hz
  'frame, poles and mounting in one word, letters of both connections behind: frame-size', // 7.5 kW on 100L
];

test('plates as makers stamp them raise what stands on them, and nothing else', () => {
  const found = [...nemaPlates, ...iecPlates].flatMap(({ name, text }) =>
    doubtsOfMotor(motor.parse({ id: 'M-1', ...readPlate(text).motor })).map(({ rule }) => `${name}: ${rule}`),
  );
  expect(found.sort()).toEqual([...STAMPED]);
});

test('the printed tables make thousands of plates and sets, with every table among them', () => {
  expect(published.map(({ motors }) => motors.length).every((many) => many > 25)).toBe(true);
  expect(published.reduce((sum, { motors }) => sum + motors.length, 0)).toBeGreaterThan(4_000);
  expect(sets.length).toBeGreaterThan(9_000);
});

describe.each(RULES)('%s', (rule) => {
  test('raises no more on what is published than is allowed it', () => {
    const own = (grade: Doubt['grade']) =>
      raised.filter((doubt) => doubt.rule === rule && doubt.grade === grade).map(({ of, says }) => `${of}: ${says}`);
    expect(own('wrong').slice(ALLOWED[rule]?.wrong ?? 0)).toEqual([]);
    expect(own('doubtful').slice(ALLOWED[rule]?.doubtful ?? 0)).toEqual([]);
  });
});

/** What the demo means to be doubted, by motor or set and rule. */
const MEANT = ['M-0501 serial', 'M-0521 speed', 'M-0522 amps', 'M-0523 serial', 'RF-201 pump-speed'];

test('the demo raises what it means to raise, and nothing else', () => {
  const site = doubtsOfSite(demoSite()).map(({ id, doubt }) => `${id} ${doubt.rule}`);
  const motors = demoMotors().flatMap((motor) => doubtsOfMotor(motor).map(({ rule }) => `${motor.id} ${rule}`));
  const places = demoSets().flatMap((set) => doubtsOfSet(set, set.failed).map(({ rule }) => `${set.tag} ${rule}`));
  expect([...motors, ...places, ...site].sort()).toEqual([...MEANT].sort());
});
