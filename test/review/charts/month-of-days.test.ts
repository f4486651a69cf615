import { expect, test } from 'vitest';
import { monthOfDays, type ReviewedDay } from '@/lib/review/charts/month-of-days';

const FEBRUARY = { from: '2028-02-01', to: '2028-03-01' }; // of a leap year
const LATER = '2028-05-01';
const day = (text: string, differs: Partial<ReviewedDay> = {}): ReviewedDay => ({
  ...{ day: text, open: 3, accepted: 1, opened: 0, closed: 0, kwh: 900, moneyHundredths: 12_600, unpriced: 0 },
  ...differs,
});
const all = Array.from({ length: 29 }, (_, i) => day(`2028-02-${String(i + 1).padStart(2, '0')}`));

test('days that are not kept are told as stretches, the 29th of February among them', () => {
  const days = [day('2028-02-02'), day('2028-02-03'), day('2028-02-28')];
  expect(monthOfDays(FEBRUARY, days, null, LATER).missing).toEqual([
    { first: '2028-02-01', last: '2028-02-01' },
    { first: '2028-02-04', last: '2028-02-27' },
    { first: '2028-02-29', last: '2028-02-29' },
  ]);
  expect(monthOfDays(FEBRUARY, all, null, LATER).missing).toEqual([]);
});

test('today and what is to come is not missed', () => {
  expect(monthOfDays(FEBRUARY, [day('2028-02-01')], null, '2028-02-04').missing).toEqual([
    { first: '2028-02-02', last: '2028-02-03' },
  ]);
  expect(monthOfDays(FEBRUARY, [], null, '2028-01-31').missing).toEqual([]);
});

test('what opened and closed is summed over the days that tell, and the others are counted', () => {
  const days = [
    day('2028-02-01', { opened: null, closed: null }),
    day('2028-02-02', { opened: 2, closed: 1 }),
    day('2028-02-03', { opened: 0, closed: 4 }),
  ];
  expect(monthOfDays(FEBRUARY, days, '2028-01-31', LATER)).toMatchObject({
    ...{ opened: 2, closed: 5, untold: 1, before: '2028-01-31', days },
  });
});

test('where no day tells, what opened and closed is not known, and not none', () => {
  const untold = [day('2028-02-01', { opened: null, closed: null })];
  expect(monthOfDays(FEBRUARY, untold, null, LATER)).toMatchObject({ opened: null, closed: null, untold: 1 });
  expect(monthOfDays(FEBRUARY, [], null, LATER)).toMatchObject({ opened: null, closed: null, untold: 0 });
});
