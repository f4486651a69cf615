import { expect, test } from 'vitest';
import { motorInputOf } from '@/app/motors/motor-input-of';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { RATING_CELLS } from '@/lib/fields/rating-cells';
import { SET_FIELDS } from '@/lib/fields/set-fields';
import type { MotorInput } from '@/lib/plant/motor';
import { type Doubt, RULES } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { doubtsOfSet } from '@/lib/plausibility/doubts-of-set';
import { doubtsOfSite } from '@/lib/plausibility/doubts-of-site';
import { motor, set } from '../matching/easy';
import { onDrive, row } from './in-set';

const plates: readonly Partial<MotorInput>[] = [
  row({ rpm: 1850 }),
  row({ amps: 66 }),
  {
    ratings: [
      { hertz: 60, hp: 10 },
      { hertz: 60, kw: 10 },
    ],
  },
  row({ efficiencyPct: 99 }),
  { codeLetter: 'V' },
  { lockedRotorPct: 20 },
  { breakdownPct: 75 },
  { has: [], brake: { torqueNm: 40 } },
  { serviceFactor: 1.9 },
  row({ serviceFactor: 1.9 }),
  { phases: 3, kind: 'single-phase' },
  { frame: '192T' },
  { frame: '100L-6' },
  row({ hp: 100 }),
  { mounting: 'on the wall' },
  { mounting: 'IM B5' },
  { measured: { pitchCircleMm: 184 } },
  { frame: '184TC', measured: { spigotMm: 100 } },
];
const sets: readonly (readonly [Parameters<typeof set>[0], Partial<MotorInput>])[] = [
  [{ mounting: 'face' }, {}],
  [{ seat: { face: 'FF215' } }, {}],
  [{ coupling: { hub: { boreMm: 20 } } }, {}],
  [{ supply: { phases: 1 } }, {}],
  [onDrive(), { phases: 1 }],
  [{ supply: { hertz: 50 } }, {}],
  [onDrive({ baseHertz: 50 }), {}],
  [{ supply: { volts: 230 } }, {}],
  [onDrive({ outputVolts: 230 }), {}],
  [{ supply: { overloadMinA: 1, overloadMaxA: 2 } }, {}],
  [{ supply: { overloadMinA: 10, overloadMaxA: 20 } }, {}],
  [{ load: { maxPumpRpm: 100 } }, {}],
  [{ load: { atPumpRpm: 100, maxPumpRpm: 100 } }, {}],
  [{ ...onDrive({ maxHertz: 90 }), load: { atPumpRpm: 100, maxPumpRpm: 1800 } }, {}],
  [{ load: { shaftKw: 40 } }, {}],
  [{ ...onDrive(), load: { shaftKw: 4.2 } }, {}],
  [{ coupling: { maxTorqueNm: 1 } }, {}],
];
const twins = ['M-1', 'm-1'].map((number) => ({ id: number, number, maker: 'Quillmoor', serial: 'QU1234', place: '' }));

const raised: Doubt[] = [
  ...plates.flatMap((plate) => doubtsOfMotor(motor(plate))),
  ...sets.flatMap(([ofSet, ofMotor]) => doubtsOfSet(set(ofSet), motor(ofMotor))),
  ...doubtsOfSite(twins).map(({ doubt }) => doubt),
];

test('every rule raises something here', () => {
  expect(RULES.filter((rule) => !raised.some((doubt) => doubt.rule === rule))).toEqual([]);
});

test('a doubt names a field that its form has', () => {
  const ofSet = SET_FIELDS.map(({ path }) => path);
  const ofMotor = [
    ...MOTOR_FIELDS.map(({ path }) => path),
    ...RATING_CELLS.map(({ cell }) => `ratings.0.${cell}`),
    ...RATING_CELLS.map(({ cell }) => `ratings.1.${cell}`),
  ];
  const missing = raised.filter(
    ({ thing, field }) => !(thing === 'set' ? ofSet.includes(field) : ofMotor.includes(motorInputOf(field))),
  );
  expect(missing.map(({ rule, field }) => `${rule}: ${field}`)).toEqual([]);
});

test('a doubt says one thing in few words, with its source, and keeps short figures', () => {
  for (const { rule, says, cite, figures } of raised) {
    expect(says, rule).toMatch(/^\S.*[.?]$/);
    expect(says.length, rule).toBeLessThan(300);
    expect(cite, rule).toMatch(/\S/);
    expect(figures, rule).toMatch(/=/);
    expect(figures.length, rule).toBeLessThan(300);
  }
});

test('a plate of every row it can have keeps its figures within what the register takes', () => {
  const rows = Array.from({ length: 24 }, (_, i) => ({
    volts: 460.123_456 + i,
    voltsMin: 414.123_456 + i,
    voltsMax: 506.123_456 + i,
    hertz: 59.987_654,
    hp: 12.345_678,
    rpm: 1850.123_456,
    amps: 123.456_789,
    pf: 0.123_456,
    efficiencyPct: 99.876_543,
  }));
  const doubts = doubtsOfMotor(motor({ ratings: rows, kind: 'permanent-magnet' }));
  expect(doubts.length).toBeGreaterThan(2);
  for (const { rule, figures } of doubts) expect(figures.length, rule).toBeLessThanOrEqual(2_000);
});
