import { expect, test } from 'vitest';
import type { MotorInput } from '@/lib/plant/motor';
import { powerOfRows } from '@/lib/plausibility/motor/power-of-rows';
import { bare } from '../row';

type Rows = NonNullable<MotorInput['ratings']>;
const gradeOf = (ratings: Rows, kind: MotorInput['kind'] = 'cage') =>
  powerOfRows(bare({ kind, ratings }))?.grade ?? null;

// Pairs of 10 CFR 431.25 (read in two texts): the trade's kW for a horsepower is no conversion of it.
test.each([
  [1, 0.75],
  [5, 3.7],
  [7.5, 5.5],
  [20, 15],
  [25, 18.5],
  [125, 90],
])('%s hp and %s kW are one power', (hp, kw) => {
  expect(
    gradeOf([
      { hertz: 60, hp },
      { hertz: 60, kw },
    ]),
  ).toBeNull();
});

test('hp typed as kW is wrong, and shows both', () => {
  const doubt = powerOfRows(
    bare({
      ratings: [
        { volts: 230, hertz: 60, hp: 10 },
        { volts: 460, hertz: 60, kw: 10 },
      ],
    }),
  );
  expect(doubt).toMatchObject({
    grade: 'wrong',
    field: 'ratings.1.kw',
    have: 10,
    unit: 'kW',
    expected: '10 hp = 7.46 kW',
  });
  expect(doubt?.says).toBe(
    'Row 2: 10 hp = 7.46 kW at 60 Hz in row 1, 10 kW at 60 Hz here: one motor has one power at one frequency.',
  );
});

test.each([
  [
    'the same twice',
    [
      { hertz: 60, hp: 5 },
      { hertz: 60, hp: 5 },
    ],
    null,
  ],
  [
    '1.4 % apart',
    [
      { hertz: 60, kw: 10 },
      { hertz: 60, kw: 10.14 },
    ],
    null,
  ],
  [
    '2 % apart',
    [
      { hertz: 60, kw: 10 },
      { hertz: 60, kw: 10.2 },
    ],
    'doubtful',
  ],
  [
    'the next size',
    [
      { hertz: 60, hp: 5 },
      { hertz: 60, hp: 7.5 },
    ],
    'wrong',
  ],
  [
    '60 Hz gives more than 50',
    [
      { hertz: 50, kw: 4 },
      { hertz: 60, kw: 4.6 },
    ],
    null,
  ],
  [
    '50 Hz gives more than 60',
    [
      { hertz: 60, kw: 4 },
      { hertz: 50, kw: 4.6 },
    ],
    'doubtful',
  ],
  [
    'another speed is another winding',
    [
      { hertz: 60, hp: 5, rpm: 1750 },
      { hertz: 60, hp: 2, rpm: 870 },
    ],
    null,
  ],
  [
    'the same share of 50 and of 60 Hz is not',
    [
      { hertz: 60, kw: 4, rpm: 1750 },
      { hertz: 50, kw: 5, rpm: 1455 },
    ],
    'doubtful',
  ],
] as const)('%s', (_, rows, grade) => {
  expect(gradeOf([...rows])).toBe(grade);
});

test.each([
  ['one row', [{ hertz: 60, hp: 5 }]],
  ['no power in one', [{ hertz: 60, hp: 5 }, { hertz: 60 }]],
  ['no hertz in one', [{ hertz: 60, hp: 5 }, { hp: 10 }]],
])('is silent with %s', (_, rows) => {
  expect(gradeOf(rows)).toBeNull();
});

test('is not asked of a two-speed motor', () => {
  expect(
    gradeOf(
      [
        { hertz: 60, hp: 5 },
        { hertz: 60, hp: 2 },
      ],
      'two-speed',
    ),
  ).toBeNull();
});
