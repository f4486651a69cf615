import { describe, expect, test } from 'vitest';
import { everyDay } from '@/lib/review/charts/every-day';

describe('every day between those that are kept', () => {
  test('of none there are none', () => {
    expect(everyDay([])).toEqual([]);
  });
  test('a day that is not kept keeps its place, also across the end of a month and a leap day', () => {
    const kept = [{ day: '2028-02-27' }, { day: '2028-02-28' }, { day: '2028-03-02' }];
    expect(everyDay(kept).map(({ day, of }) => `${day} ${of === null ? 'not kept' : of.day}`)).toEqual([
      '2028-02-27 2028-02-27',
      '2028-02-28 2028-02-28',
      '2028-02-29 not kept',
      '2028-03-01 not kept',
      '2028-03-02 2028-03-02',
    ]);
  });
});
