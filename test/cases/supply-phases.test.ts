import { describe, expect, test } from 'vitest';
import { isWellFormed, judged, nema } from './whole-case';

const single = (volts: number) => ({
  kind: 'single-phase',
  phases: 1,
  leads: null,
  design: null,
  codeLetter: null,
  lockedRotorPct: 250,
  ratings: [{ volts, hertz: 60, hp: 5, rpm: 1750, amps: 8.5 }],
});

test('a single-phase motor across two legs of its own voltage is for a person to judge', () => {
  const found = judged(nema, { motor: single(460) });
  expect(found.of('phases')).toMatchObject({
    grade: 'check',
    have: 1,
    need: 3,
    unit: 'phases',
    difference: -2,
    by: 'person',
    reading: null,
  });
  expect(found.verdict).toBe('check-first');
  isWellFormed(found);
});

test('of another voltage it does not equal the supply', () => {
  const found = judged(nema, { motor: single(230) });
  expect(found.of('phases')).toMatchObject({ grade: 'block', have: 1, need: 3 });
  expect(found.verdict).toBe('unsuitable');
});

test('a three-phase motor on a single-phase supply', () => {
  const found = judged(nema, { set: { supply: { phases: 1 } } });
  expect(found.of('phases')).toMatchObject({ grade: 'block', have: 3, need: 1, difference: 2 });
  expect(found.verdict).toBe('unsuitable');
});

test('single phase for single phase', () => {
  const found = judged(nema, { both: single(230), set: { supply: { phases: 1, volts: 230 } } });
  expect(found.of('phases')).toMatchObject({ grade: 'ok', have: 1, need: 1, difference: 0 });
  expect(found.of('starting')?.grade).toBe('ok');
  expect(found.verdict).toBe('straight-swap');
});

describe('not told', () => {
  test('the motor', () => {
    const found = judged(nema, { motor: { phases: null } });
    expect(found.of('phases')).toMatchObject({ grade: 'check', have: null, need: 3, by: 'reading' });
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });
  test('the supply', () => {
    const found = judged(nema, { set: { supply: { phases: null } } });
    expect(found.of('phases')).toMatchObject({ grade: 'check', have: 3, need: null, by: 'reading' });
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });
  test('nothing of the supply: phases and frequency are readings, and nothing passes', () => {
    const found = judged(nema, { set: { supply: { phases: null, volts: null, hertz: null, start: null } } });
    expect(found.of('phases')).toMatchObject({ grade: 'check', by: 'reading' });
    expect(found.of('frequency')).toMatchObject({ grade: 'check', by: 'reading' });
    expect(found.of('voltage')).toBeNull();
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });
});
