import { describe, expect, test } from 'vitest';
import { CRITERIA, GRADES } from '@/lib/matching/finding';
import { VERDICTS } from '@/lib/matching/verdict';
import { answered } from './asked';
import { changed, example, type Json, printed } from './example';

/** The keys of the documented result, in its order. */
const RESULT = ['id', 'rank', 'verdict', 'hours', 'why', 'operatingPoint', 'findings'];
const POINT = ['motorRpm', 'pumpRpm', 'pumpKw', 'motorKw', 'loadPct', 'torquePct', 'amps', 'flowChangePct'];
const FINDING = ['criterion', 'grade', 'have', 'need', 'unit', 'difference', 'says', 'work', 'by', 'reading', 'cite'];

const withRatio = (whole: Json) => changed(whole, ['set', 'coupling', 'ratio'], 5);
const onDrive = (whole: Json) => changed(whole, ['set', 'supply', 'start'], 'drive');
const bare = { set: { tag: 'P-1', mounting: 'foot' }, candidates: [{ id: 'M-1' }] };

describe.each([
  ['as printed', printed()],
  ['with the failed motor told', example()],
  ['through a gear', withRatio(example())],
  ['on its drive', onDrive(withRatio(example()))],
  ['where next to nothing is known', bare],
])('the example %s', (_, whole) => {
  // What stands in the object is what is printed: JSON leaves out undefined and turns NaN into null.
  const told = JSON.parse(JSON.stringify(answered(whole)));

  test('is answered with every key of the contract and no other', () => {
    expect(Object.keys(told)).toEqual(['tag', 'results']);
    expect(told.results).toHaveLength(1);
    for (const result of told.results) {
      expect(Object.keys(result)).toEqual(RESULT);
      expect(Object.keys(result.operatingPoint)).toEqual(POINT);
      for (const finding of result.findings) {
        expect(Object.keys(finding)).toEqual(FINDING);
        if (finding.work !== null) expect(Object.keys(finding.work)).toEqual(['id', 'what', 'hours']);
      }
    }
  });

  test('has values of the kinds the contract names', () => {
    const [result] = told.results;
    const figure = expect.toSatisfy((value) => value === null || Number.isFinite(value));
    const words = expect.stringMatching(/\S/);
    expect(result).toEqual({
      id: expect.any(String),
      rank: 1,
      verdict: expect.toBeOneOf([...VERDICTS]),
      hours: expect.any(Number),
      why: words,
      operatingPoint: Object.fromEntries(POINT.map((key) => [key, figure])),
      findings: expect.any(Array),
    });
    const compared = expect.toSatisfy((value) => value === null || typeof value === 'string' || Number.isFinite(value));
    for (const finding of result.findings)
      expect(finding).toEqual({
        criterion: expect.toBeOneOf([...CRITERIA]),
        grade: expect.toBeOneOf([...GRADES]),
        have: compared,
        need: compared,
        unit: expect.toSatisfy((value) => value === null || (typeof value === 'string' && value !== '')),
        difference: figure,
        says: words,
        work: finding.work && { id: words, what: words, hours: expect.any(Number) },
        by: expect.toBeOneOf([null, 'reading', 'person']),
        reading: finding.by === 'reading' ? words : null,
        cite: words,
      });
  });
});

test('the operating point is near the documented one: a rotary pump through a gear of 5', () => {
  // Common practice, no source: the slip of a 1750 rpm motor at 83 % torque is near 41 rpm of 50, less on 480 V.
  const [result] = answered(withRatio(example())).results;
  const near = { motorRpm: 1755, pumpRpm: 351, pumpKw: 3.11, motorKw: 3.11, loadPct: 83.4, torquePct: 83.1, amps: 5.7 };
  for (const [key, documented] of Object.entries(near)) {
    const had = result?.operatingPoint[key as keyof typeof near] ?? Number.NaN;
    expect(Math.abs(had / documented - 1), key).toBeLessThan(0.02);
  }
  expect(result?.operatingPoint.flowChangePct).toBeGreaterThan(0);
  expect(result?.operatingPoint.flowChangePct).toBeLessThan(1);
});

test('a pump at 350 rpm coupled straight to a 4-pole motor is stopped by its speed', () => {
  const [result] = answered(printed()).results;
  expect(result?.verdict).toBe('unsuitable');
  expect(result?.findings.find(({ criterion }) => criterion === 'speed')?.grade).toBe('block');
});

test('where next to nothing is known, nothing passes that the physics always has', () => {
  const [result] = answered(bare).results;
  expect(result?.verdict).toBe('check-first');
  for (const id of ['mounting', 'shaft-diameter', 'phases', 'frequency', 'speed'])
    expect(result?.findings.find(({ criterion }) => criterion === id)?.grade, id).toBe('check');
});

test('no candidates: no results', () => {
  expect(answered(changed(example(), ['candidates'], []))).toEqual({ tag: 'P-101', results: [] });
});

describe('the day is optional', () => {
  const shelved = (asOf: string | null | undefined) =>
    answered(
      changed(
        changed(example(), ['candidates', 0, 'spare'], {
          shelvedOn: '2020-01-02',
          testedOn: null,
          insulationMohm: null,
        }),
        ['asOf'],
        asOf,
      ),
    ).results[0];

  test('without it nothing is said about shelf time', () => {
    expect(shelved(undefined)?.why).not.toMatch(/month|year|shelf|shelved/i);
    expect(shelved(null)).toEqual(shelved(undefined));
  });

  test('with it a spare of six years says so, and the test is in its hours', () => {
    expect(shelved('2026-11-25')?.why).toMatch(/shelved on 2020-01-02: test it/);
    expect(shelved('2026-11-25')?.hours).toBeGreaterThan(shelved(undefined)?.hours ?? Number.POSITIVE_INFINITY);
  });
});

describe('what the coupling drives when it is not told goes by its type', () => {
  test.each([
    ['coupling', 'foot', 'hub'],
    ['belt', 'foot', 'hub'],
    ['close-coupled', 'face', 'pump-shaft'],
    ['gear', 'face', 'quill'],
    ['gear', 'foot-and-face', 'quill'],
    ['gear', 'foot', 'hub'],
    [null, 'face', 'hub'],
  ])('%s on %s: %s', (type, mounting, input) => {
    const whole = changed(changed(example(), ['set', 'coupling', 'type'], type), ['set', 'mounting'], mounting);
    const told = answered(changed(whole, ['set', 'coupling', 'input'], input));
    expect(answered(changed(whole, ['set', 'coupling', 'input'], undefined))).toEqual(told);
    // The three are not all judged alike, or the test could not fail.
    const others = ['hub', 'quill', 'pump-shaft'].map((one) =>
      JSON.stringify(answered(changed(whole, ['set', 'coupling', 'input'], one))),
    );
    expect(new Set(others).size).toBeGreaterThan(1);
  });
});
