import { expect, test } from 'vitest';
import { bearings } from '@/lib/matching/criteria/surroundings/bearings';
import { motor, set } from '../easy';
import { asked } from './asked';

const belt = (pitchDiameterMm: number | null, changeable: boolean | null = null, failed: object | null = {}) => ({
  ...set({ coupling: { type: 'belt', ratio: 2, sheave: { pitchDiameterMm, changeable } } }),
  failed: failed && motor(failed),
});

// NEMA MG 1-14.42: 184T, 5 hp, 1800 rpm: 3.0 in = 76.2 mm (read in two texts).
test.each([
  ['larger', 90, null, 'ok'],
  ['as printed', 76.2, null, 'ok'],
  ['sold as 76 mm', 76, null, 'ok'],
  ['smaller, changeable', 70, true, 'work'],
  ['smaller, fixed', 70, false, 'block'],
  ['smaller, nobody has said', 70, null, 'check'],
  ['unknown', null, true, 'check'],
] as const)('the motor sheave is %s (%s mm)', (_, pitch, changeable, grade) => {
  const found = asked(bearings, belt(pitch, changeable), motor());
  expect(found).toMatchObject({ grade, unit: 'mm' });
  expect(found?.need).toBeCloseTo(76.2, 6);
  expect(found?.work?.id ?? null).toBe(pitch === 70 && changeable !== false ? 'sheave' : null);
});

// The same clause: 182T 3 hp 1800 rpm 2.4 in; 215T 10 hp 1800 rpm 3.8 in; 254T 15 hp 3600 rpm 3.8 in (two texts each).
test.each([
  ['182T', 4, 3, 1750, 60.96],
  ['215T', 4, 10, 1760, 96.52],
  ['254T', 2, 15, 3520, 96.52],
])('least sheave of %s, %s poles, %s hp', (frame, poles, hp, rpm, mm) => {
  const candidate = motor({ frame, poles, ratings: [{ volts: 460, hertz: 60, hp, rpm, amps: 10 }] });
  expect(asked(bearings, belt(mm), candidate)).toMatchObject({ grade: 'ok' });
  expect(asked(bearings, belt(mm - 1, false), candidate)?.grade).toBe('block');
});

test('the poles are told by the plate speed where they are not printed', () => {
  expect(asked(bearings, belt(70, false), motor({ poles: null }))?.grade).toBe('block');
});

test.each([
  ['power', { ratings: [{ volts: 460, hertz: 60, rpm: 1750, amps: 6.6 }] }],
  ['poles and speed', { poles: null, ratings: [{ volts: 460, hertz: 60, hp: 5, amps: 6.6 }] }],
])('with %s unknown the least sheave is a reading, never a pass', (_, differs) => {
  expect(asked(bearings, belt(90), motor(differs))).toMatchObject({ grade: 'check', by: 'reading' });
});

// IEC sets no least sheave: the shaft stands in, common practice, no source.
const iec = (frame: string, differs: object = {}) =>
  motor({ frame, mounting: 'IM B3', ratings: [{ volts: 400, hertz: 50, kw: 4, rpm: 1440, amps: 8 }], ...differs });
test.each([
  ['the same frame', '112M', '112M', 'note'],
  ['a thicker shaft', '132S', '112M', 'note'],
  ['a thinner shaft', '100L', '132S', 'check'],
])('without a standard least sheave: %s', (_, frame, failedFrame, grade) => {
  const where = { ...belt(80), failed: iec(failedFrame) };
  expect(asked(bearings, where, iec(frame))).toMatchObject({ grade, by: grade === 'check' ? 'person' : null });
});

test('without a standard least sheave and no failed motor to hold it against: a person', () => {
  expect(asked(bearings, belt(80, null, null), iec('112M'))).toMatchObject({ grade: 'check', by: 'person' });
  expect(asked(bearings, belt(80, null, null), iec('112M', { frame: null }))).toMatchObject({ grade: 'check' });
});

test('is asked of belts only', () => {
  for (const type of ['coupling', 'close-coupled', 'gear', null] as const)
    expect(asked(bearings, set({ coupling: { type } }), motor())).toBeNull();
});
