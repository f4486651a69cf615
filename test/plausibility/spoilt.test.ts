import { describe, expect, test } from 'vitest';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { spoiltPlates } from '../../bench/spoilt-plates';

/**
 * Of a hundred plates spoilt in one way, at least so many raise something. Where nothing stands it is all of them. hp
 * typed as kW is a third more power: without a power factor the amps alone do not always tell.
 */
const CAUGHT: Readonly<Record<string, number>> = { 'hp typed as kW in every row': 40, 'single-phase': 90 };

const spoilt = spoiltPlates();

test('every way of spoiling makes hundreds of plates', () => {
  expect(spoilt.filter(({ motors }) => motors.length < 500)).toEqual([]);
  expect(Object.keys(CAUGHT).filter((how) => !spoilt.some((one) => one.how === how))).toEqual([]);
});

describe.each(spoilt)('$how', ({ how, motors }) => {
  test('is caught', () => {
    const missed = motors.filter((motor) => doubtsOfMotor(motor).length === 0);
    const caught = 100 * (1 - missed.length / motors.length);
    expect(caught, missed[0]?.id).toBeGreaterThanOrEqual(CAUGHT[how] ?? 100);
  });
});
