import { expect, test } from 'vitest';
import { supply } from '@/lib/review/supply/supply';
import { inPlace, onDrive, row } from '../in-place';

// A plate holds for a tenth above and below its volts: NEMA MG 1-12.44.1; IEC 60034-1 zone A is 5 % (read in two texts).
test.each([
  ['460 V on 480 V, by design', 480, null],
  ['5 % below', 437, null],
  ['7 % below', 428, 'look'],
  ['13 % below', 400, 'at-once'],
  ['13 % above', 520, 'at-once'],
] as const)('%s', (_, volts, urgency) => {
  expect(supply(inPlace({ supply: { volts } }))?.urgency ?? null).toBe(urgency);
});

test('measured volts need no further reading', () => {
  expect(supply(inPlace({ supply: { measuredVolts: 425 } }))).toMatchObject({ urgency: 'plan', have: 460, need: 425 });
});

test('a motor plated for another frequency', () => {
  expect(supply(inPlace({ supply: { volts: 400, hertz: 50 } }))).toMatchObject({
    urgency: 'plan',
    have: 60,
    need: 50,
    unit: 'Hz',
  });
});

test('a three-phase motor on one phase', () => {
  expect(supply(inPlace({ supply: { phases: 1 } }))).toMatchObject({ urgency: 'at-once', have: 3, need: 1 });
});

test('volts uneven by more than 5 %', () => {
  // NEMA MG 1 14.36 (read in two texts): above 5 % no motor should run.
  expect(supply(inPlace({ supply: { unbalancePct: 5.1 } }))?.urgency).toBe('at-once');
  expect(supply(inPlace({ supply: { unbalancePct: 4.9 } }))).toBeNull();
});

test('on a drive its output is what counts', () => {
  expect(supply(inPlace(onDrive({ outputVolts: 400 }, { supply: { volts: 460 } })))?.says).toContain('drive’s output');
});

test('what is not known is asked for', () => {
  expect(supply(inPlace({ supply: { volts: null } }))).toMatchObject({
    urgency: 'look',
    reading: expect.stringContaining('Measure'),
  });
  expect(supply(inPlace({}, row({ hertz: null })))).toMatchObject({ urgency: 'look' });
});

test('the worst speaks first and the others with it', () => {
  const found = supply(inPlace({ supply: { volts: 400, unbalancePct: 6 } }));
  expect(found?.says).toMatch(
    /more than 10 %.*above 5 % no motor should run|above 5 % no motor should run.*more than 10 %/,
  );
});
