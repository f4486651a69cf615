import { expect, test } from 'vitest';
import { frequency } from '@/lib/matching/criteria/supply/frequency';
import { motor, set } from '../easy';
import { asked } from './asked';

const at = (volts: number | null, hertz: number | null, rpm = 1440) => ({ ratings: [{ volts, hertz, kw: 7.5, rpm }] });

const MEMORY = 'V/f held (read in two texts); the limits of φ from memory';

test.each([
  ['plated', { volts: 400, hertz: 50 }, at(400, 50), 'ok', 'the plate'],
  [
    'plated for both',
    { volts: 480, hertz: 60 },
    { ratings: [...at(400, 50).ratings, ...at(480, 60).ratings] },
    'ok',
    'the plate',
  ],
  ['400/50 on 480/60, φ 1', { volts: 480, hertz: 60 }, at(400, 50), 'check', MEMORY],
  ['460/60 on 380/50, φ 0.99', { volts: 380, hertz: 50 }, at(460, 60), 'check', MEMORY],
  ['460/60 on 415/50, φ 1.083', { volts: 415, hertz: 50 }, at(460, 60), 'check', '8 % over-fluxed, marginal: article'],
  ['460/60 on 460/50, φ 1.2', { volts: 460, hertz: 50 }, at(460, 60), 'block', 'saturates: engineering note'],
  ['400/50 on 400/60, φ 0.833', { volts: 400, hertz: 60 }, at(400, 50), 'check', MEMORY],
  ['400/50 on 380/60, φ 0.79', { volts: 380, hertz: 60 }, at(400, 50), 'block', MEMORY],
  ['φ exactly 1.10', { volts: 440, hertz: 50 }, at(480, 60), 'check', MEMORY],
  ['φ exactly 0.80', { volts: 384, hertz: 60 }, at(400, 50), 'check', MEMORY],
  ['plate volts unknown', { volts: 480, hertz: 60 }, at(null, 50), 'check', 'unknown is never a pass'],
  ['supply volts unknown', { volts: null, hertz: 60 }, at(400, 50), 'check', 'unknown is never a pass'],
  ['supply hertz unknown', { volts: 480, hertz: null }, at(400, 50), 'check', 'unknown is never a pass'],
  ['plate hertz unknown', { volts: 480, hertz: 60 }, at(480, null), 'check', 'unknown is never a pass'],
  ['no rows', { volts: 480, hertz: 60 }, { ratings: [] }, 'check', 'unknown is never a pass'],
])('frequency: %s', (_, supply, differs, grade, _source) => {
  expect(asked(frequency, set({ supply }), motor(differs))?.grade).toBe(grade);
});

test('a re-rated motor is for a competent person, told its power and that its marks are void', () => {
  const found = asked(
    frequency,
    set({ supply: { volts: 380, hertz: 50 } }),
    motor({ ...at(460, 60), enclosure: 'TEFC' }),
  );
  expect(found?.by).toBe('person');
  expect(found?.says).toContain('6 kW'); // 0.8 × 7.5 kW, the application note's table (read in one text)
  expect(found?.says).toMatch(/Code letter.*certificate/);
});

test('below 95 % flux the torque is told: (5/6)² = 69 %', () => {
  expect(asked(frequency, set({ supply: { volts: 400, hertz: 60 } }), motor(at(400, 50)))?.says).toContain(
    'torque 69 %',
  );
});

test('a higher frequency may not drive it past its highest speed', () => {
  const candidate = motor({ ...at(400, 50), maxRpm: 1700 });
  expect(asked(frequency, set({ supply: { volts: 480, hertz: 60 } }), candidate)?.grade).toBe('block');
});

test('on a drive φ is that of its output: 480 V at 50 Hz saturates 460/60 and suits 575/60', () => {
  const supply = { volts: 480, hertz: 60, start: 'drive', drive: { outputVolts: 480, baseHertz: 50 } } as const;
  expect(asked(frequency, set({ supply }), motor(at(460, 60)))?.grade).toBe('block'); // φ 1.252
  expect(asked(frequency, set({ supply }), motor(at(230, 60)))?.grade).toBe('block'); // φ 2.504
  expect(asked(frequency, set({ supply }), motor(at(400, 50)))?.grade).toBe('ok');
  expect(asked(frequency, set({ supply }), motor(at(575, 60)))).toMatchObject({ grade: 'check', by: 'person' }); // φ 1.0017
});

test('a drive with too few volts for the plate at base frequency is a block: φ 0.79', () => {
  const on = (outputVolts: number) => ({ volts: 480, start: 'drive', drive: { outputVolts, baseHertz: 60 } }) as const;
  expect(asked(frequency, set({ supply: on(380) }), motor(at(400, 50)))?.grade).toBe('block');
  expect(asked(frequency, set({ supply: on(400) }), motor(at(400, 50)))?.grade).toBe('check'); // φ 0.833
});
