import { expect, test } from 'vitest';
import { voltage } from '@/lib/matching/criteria/supply/voltage';
import { motor, set } from '../easy';
import { asked } from './asked';

const plate = (row: object) => ({ ratings: [{ hertz: 60, hp: 5, rpm: 1750, ...row }] });

const NEMA = 'NEMA MG 1-12.44.1: ±10 %';
const IEC = 'IEC 60034-1 zone A: ±5 %';
const NPV = 'a plate is below its nominal system by design (handbook); NEC 430.250 voltage ranges';
const MEMORY = 'trade caution, from memory';

test.each([
  ['460 on 460', { volts: 460 }, plate({ volts: 460 }), 'ok', IEC],
  ['460 on a 480 V system', { volts: 480 }, plate({ volts: 460 }), 'ok', NPV],
  ['230 on a 240 V system', { volts: 240 }, plate({ volts: 230 }), 'ok', NPV],
  ['575 on a 600 V system', { volts: 600 }, plate({ volts: 575 }), 'ok', NPV],
  ['200 on a 208 V system', { volts: 208 }, plate({ volts: 200 }), 'ok', NPV],
  ['115 on a 120 V system', { volts: 120 }, plate({ volts: 115 }), 'ok', NPV],
  ['400 on 415', { volts: 415 }, plate({ volts: 400 }), 'ok', IEC],
  ['exactly 5 % low', { volts: 437 }, plate({ volts: 460 }), 'ok', IEC],
  ['exactly 5 % high', { volts: 483 }, plate({ volts: 460 }), 'ok', IEC],
  ['6 % low', { volts: 432 }, plate({ volts: 460 }), 'check', NEMA],
  ['exactly 10 % low', { volts: 414 }, plate({ volts: 460 }), 'check', NEMA],
  ['exactly 10 % high', { volts: 506 }, plate({ volts: 460 }), 'check', NEMA],
  ['10.2 % low', { volts: 413 }, plate({ volts: 460 }), 'block', NEMA],
  ['230 on 208', { volts: 208 }, plate({ volts: 230 }), 'check', NEMA],
  ['200 on 240', { volts: 240 }, plate({ volts: 200 }), 'block', NEMA],
  ['230 on 460', { volts: 460 }, plate({ volts: 230 }), 'block', NEMA],
  ['in a printed range', { volts: 380 }, plate({ volts: 400, voltsMin: 380, voltsMax: 420 }), 'ok', 'the plate'],
  ['6 % above a printed range', { volts: 440 }, plate({ voltsMin: 380, voltsMax: 415 }), 'check', NEMA],
  ['208-230 at 208', { volts: 208 }, plate({ volts: 230, voltsMin: 208, voltsMax: 230 }), 'check', MEMORY],
  ['208-230 at 208, range alone', { volts: 208 }, plate({ voltsMin: 208, voltsMax: 230 }), 'check', MEMORY],
  ['208-230 at 230', { volts: 230 }, plate({ voltsMin: 208, voltsMax: 230 }), 'ok', 'the plate'],
  ['a row of its own at 208', { volts: 208 }, plate({ volts: 208 }), 'ok', 'the plate'],
  ['measured 435 on a 480 V system', { volts: 480, measuredVolts: 435 }, plate({ volts: 460 }), 'check', NEMA],
  ['measured 480', { volts: 480, measuredVolts: 480 }, plate({ volts: 460 }), 'ok', IEC],
  ['unbalance 1 %', { volts: 460, unbalancePct: 1 }, plate({ volts: 460 }), 'ok', 'NEMA MG 1 14.36'],
  ['unbalance 2 %', { volts: 460, unbalancePct: 2 }, plate({ volts: 460 }), 'note', 'NEMA MG 1 14.36'],
  ['unbalance 5 %', { volts: 460, unbalancePct: 5 }, plate({ volts: 460 }), 'note', 'NEMA MG 1 14.36'],
  ['unbalance 5.1 %', { volts: 460, unbalancePct: 5.1 }, plate({ volts: 460 }), 'block', 'NEMA MG 1 14.36'],
  ['supply volts unknown', { volts: null }, plate({ volts: 460 }), 'check', 'unknown is never a pass'],
  ['plate volts unknown', { volts: 460 }, plate({}), 'check', 'unknown is never a pass'],
])('voltage: %s', (_, supply, differs, grade, _source) => {
  expect(asked(voltage, set({ supply }), motor(differs))?.grade).toBe(grade);
});

test('is not asked where the plate has no row at the frequency of the supply', () => {
  expect(asked(voltage, set({ supply: { volts: 400, hertz: 50, unbalancePct: 4 } }), motor())).toBeNull();
  expect(asked(voltage, set({ supply: { hertz: null } }), motor())).toBeNull();
});

test('an unbalance over 5 % is a block whatever row the plate has, and not on a drive', () => {
  const unbalanced = { volts: 400, hertz: 50, unbalancePct: 6 };
  expect(asked(voltage, set({ supply: unbalanced }), motor())?.grade).toBe('block');
  const supply = { ...unbalanced, start: 'drive', drive: { baseHertz: 50, outputVolts: 400 } } as const;
  expect(asked(voltage, set({ supply }), motor())).toBeNull();
});

test('says by how much the torque falls: (432/460)² = 88 %', () => {
  const found = asked(voltage, set({ supply: { volts: 432 } }), motor());
  expect(found?.says).toContain('88 %');
  expect(found).toMatchObject({ have: 460, need: 432, difference: 28, unit: 'V', by: 'reading' });
});

test('once measured, a low voltage is for a competent person', () => {
  expect(asked(voltage, set({ supply: { measuredVolts: 432 } }), motor())?.by).toBe('person');
});

test('on a drive judges its output, and leaves unbalance to the drive', () => {
  const input = { phases: 3, volts: 230, hertz: 50, unbalancePct: 8, start: 'drive' } as const;
  const supply = { ...input, drive: { outputVolts: 460, baseHertz: 60 } };
  expect(asked(voltage, set({ supply }), motor())).toMatchObject({ grade: 'ok', need: 460 });
  expect(asked(voltage, set({ supply: { ...input, drive: { baseHertz: 60 } } }), motor())).toMatchObject({
    grade: 'block',
    need: 230,
  });
  expect(asked(voltage, set({ supply: { ...input, volts: null, drive: { baseHertz: 60 } } }), motor())?.grade).toBe(
    'check',
  );
});
