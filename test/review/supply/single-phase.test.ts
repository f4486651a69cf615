import { expect, test } from 'vitest';
import { singlePhase } from '@/lib/review/supply/single-phase';
import { inPlace } from '../in-place';

const of = (hp: number, ofMotor: object = {}) =>
  singlePhase(
    inPlace(
      { supply: { phases: 1, volts: 230 } },
      {
        kind: 'single-phase',
        phases: 1,
        ratings: [{ volts: 230, hertz: 60, hp, rpm: 1745, amps: 5 * hp }],
        ...ofMotor,
      },
    ),
  );

test.each([
  // Up to 3 hp: common practice, no source. The table of single-phase currents ends at 10 hp: NEC Table 430.248 (two texts).
  ['3 hp', 3, null],
  ['5 hp', 5, 'next-time'],
  ['10 hp', 10, 'next-time'],
  ['15 hp', 15, 'plan'],
] as const)('%s', (_, hp, urgency) => {
  expect(of(hp)?.urgency ?? null).toBe(urgency);
});

test('2.2 kW is sold as 3 hp', () => {
  const kw = [{ volts: 230, hertz: 50, kw: 2.2, rpm: 1440, amps: 14 }];
  expect(of(3, { ratings: kw })).toBeNull();
});

test.each([
  ['of three phases', inPlace()],
  ['where neither plate nor kind tells the phases', inPlace({}, { phases: null })],
])('says nothing %s', (_, asked) => {
  expect(singlePhase(asked)).toBeNull();
});

test('the kind alone tells it', () => {
  expect(of(5, { phases: null })).not.toBeNull();
});
