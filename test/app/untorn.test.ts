import { expect, test } from 'vitest';
import { untorn } from '@/app/look/untorn';

test('a figure never stands without its unit, and a line still breaks between its parts', () => {
  expect(untorn('184T, 5 hp, 460 V 60 Hz: straight swap, 2 h 00').split(' ')).toEqual([
    ...['184T,', '5\u00a0hp,', '460\u00a0V\u00a060\u00a0Hz:', 'straight\u00a0swap,', '2\u00a0h\u00a000'],
  ]);
});
