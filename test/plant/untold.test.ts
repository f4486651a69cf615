import { expect, test } from 'vitest';
import { motor } from '@/lib/plant/motor';
import { rating } from '@/lib/plant/rating';
import { UNTOLD_MOTOR, UNTOLD_RATING } from '@/lib/plant/untold';

test('a motor of which nothing is known is what the schema makes of its number alone', () => {
  expect({ id: 'M-1', ...UNTOLD_MOTOR }).toStrictEqual(motor.parse({ id: 'M-1' }));
});

test('a row of which nothing is known is what the schema makes of nothing', () => {
  expect(UNTOLD_RATING).toStrictEqual(rating.parse({}));
});
