import { describe, expect, test } from 'vitest';
import { temperatureAltitude } from '@/lib/matching/criteria/load/temperature-altitude';
import { motor, set } from '../easy';
import { asked } from './asked';

const at = (ambientC: number | null, altitudeM: number | null, unbalancePct: number | null = null) =>
  set({ surroundings: { ambientC, altitudeM }, supply: { unbalancePct } });

test.each([
  ['usual', at(40, 200), {}, 'ok', 100],
  ['nothing stated: not asked', at(null, null), {}, null, null],
  // A motor application manual, ambient and altitude factors (read in one text).
  ['50 °C', at(50, 200), {}, 'note', 92],
  ['60 °C', at(60, 200), {}, 'note', 82],
  ['2000 m', at(40, 2000), {}, 'note', 94],
  ['50 °C at 2000 m', at(50, 2000), {}, 'note', 86],
  ['1000 m', at(40, 1000), {}, 'ok', 100],
  ['30 °C makes up for 2000 m', at(30, 2000), {}, 'ok', 100],
  ['50 °C, plated for 50', at(50, 200), { ambientC: 50 }, 'ok', 100],
  ['2 % unbalance: 0.95 (read in two texts)', at(40, 200, 2), {}, 'note', 95],
  ['1 % unbalance', at(40, 200, 1), {}, 'ok', 100],
  ['above every table', at(65, 200), {}, 'check', null],
  ['above 4000 m', at(40, 4500), {}, 'check', null],
  ['colder than −15 °C', at(-20, 200), {}, 'check', null],
  ['no colder than plated', at(-20, 200), { ambientC: -20 }, 'ok', null],
  ['no ambient on the plate, 40 °C: the usual one', at(40, 200), { ambientC: null }, 'ok', 100],
  ['no ambient on the plate, 45 °C', at(45, 200), { ambientC: null }, 'check', null],
] as const)('%s', (_, asks, plated, grade, pct) => {
  const found = asked(temperatureAltitude, asks, motor(plated));
  expect(found?.grade ?? null).toBe(grade);
  if (pct !== null && pct < 100) expect(found?.says).toContain(`${pct} %`);
});

describe('the unbalance', () => {
  test('of a drive’s input does not reach the motor', () => {
    const asks = set({ supply: { unbalancePct: 3, start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } } });
    expect(asked(temperatureAltitude, asks, motor())?.grade).toBe('ok');
  });
});
