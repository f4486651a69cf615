import { expect, test } from 'vitest';
import { shaftHeight } from '@/lib/matching/criteria/mount/shaft-height';
import { asked, failed, gradeAndWork } from './asked';

const B3 = 'IM B3';

// 184T stands 4.5 in (114.3 mm) high, 143T/145T 3.5 in, 213T 5.25 in: NEMA MG 1 4.4.1, D = number / 4 (published).
// 112M stands 112 mm high, 132S 132 mm, 100L 100 mm: IEC 60072-1, the frame number (published).
// Limits: shims to 6 mm, ground blocks above, plates from 10 mm: common practice, no source.
test.each([
  ['the same height', {}, {}, 'ok', null],
  ['184T for 182T', { failed: failed('182T') }, {}, 'ok', null],
  ['112M for 184T, 1.5 mm present', {}, { frame: '112M', mounting: B3 }, 'work', 'shims'],
  ['shims at the limit', { base: { shimsPresentMm: 3.7 } }, { frame: '112M', mounting: B3 }, 'work', 'shims'],
  ['just over the limit', { base: { shimsPresentMm: 3.71 } }, { frame: '112M', mounting: B3 }, 'work', 'ground-block'],
  ['the site’s limit', { base: { shimLimitMm: null } }, { frame: '112M', mounting: B3 }, 'work', 'shims'],
  [
    'no shims allowed',
    { base: { shimLimitMm: 0, shimsPresentMm: 0 } },
    { frame: '112M', mounting: B3 },
    'work',
    'ground-block',
  ],
  ['100L for 184T', {}, { frame: '100L', mounting: B3 }, 'work', 'ground-block'],
  ['145T on a transition base', { base: { transitionBase: true } }, { frame: '145T' }, 'work', 'transition-base'],
  [
    'lower, shims present unknown',
    { base: { shimsPresentMm: null } },
    { frame: '112M', mounting: B3 },
    'work',
    'shims',
  ],
  [
    'lower by more than the limit, shims present unknown',
    { base: { shimsPresentMm: null } },
    { frame: '100L', mounting: B3 },
    'work',
    'ground-block',
  ],
  [
    'higher, shims present unknown',
    { base: { shimsPresentMm: null }, failed: failed('112M', { mounting: B3 }) },
    {},
    'check',
    null,
  ],
  ['same, shims present unknown', { base: { shimsPresentMm: null } }, {}, 'ok', null],
  [
    'higher by less than the shims present',
    { base: { shimsPresentMm: 3 }, failed: failed('112M', { mounting: B3 }) },
    {},
    'work',
    'shims',
  ],
  [
    'higher by just the shims present',
    { base: { shimsPresentMm: 2.3 }, failed: failed('112M', { mounting: B3 }) },
    {},
    'work',
    'shims',
  ],
  [
    'higher by more than the shims present',
    { base: { shimsPresentMm: 1.5 }, failed: failed('112M', { mounting: B3 }) },
    {},
    'block',
    null,
  ],
  ['213T for 184T', {}, { frame: '213T' }, 'block', null],
  [
    'seat measured, the failed motor’s frame does not count',
    { seat: { shaftHeightMm: 112 }, base: { shimsPresentMm: 0 } },
    {},
    'block',
    null,
  ],
  ['motor measured wins over its frame', {}, { measured: { shaftHeightMm: 112 } }, 'work', 'shims'],
  ['no plate and no measure', { failed: null }, {}, 'check', null],
  ['no plate, but measured', { failed: null, seat: { shaftHeightMm: 114.3 } }, {}, 'ok', null],
  ['frame unknown', {}, { frame: null }, 'check', null],
  ['Y voids the feet', {}, { frame: '184TY' }, 'check', null],
  [
    'belt within take-up, lower',
    { coupling: { type: 'belt', takeUpMm: 40 } },
    { frame: '112M', mounting: B3 },
    'note',
    null,
  ],
  ['belt within take-up, higher', { coupling: { type: 'belt', takeUpMm: 40 } }, { frame: '213T' }, 'note', null],
  [
    'belt beyond take-up, lower',
    { coupling: { type: 'belt', takeUpMm: 10 } },
    { frame: '145T' },
    'work',
    'ground-block',
  ],
  ['belt beyond take-up, higher', { coupling: { type: 'belt', takeUpMm: 10 } }, { frame: '213T' }, 'check', null],
  ['belt, take-up unknown, higher', { coupling: { type: 'belt' } }, { frame: '213T' }, 'check', null],
  ['face and feet', { mounting: 'foot-and-face' }, { frame: '213T' }, 'block', null],
] as const)('shaft height: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(shaftHeight, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a shaft height is not asked of a motor held by its face alone', () => {
  expect(asked(shaftHeight, { mounting: 'face' })).toBeNull();
});

test('a 112M on a 184T base is shimmed by the difference, nominal against nominal', () => {
  expect(asked(shaftHeight, {}, { frame: '112M', mounting: B3 })).toMatchObject({
    have: 112,
    need: 114.3,
    unit: 'mm',
    difference: -2.3,
    work: { id: 'shims', what: 'Shim each foot by 2.3 mm', hours: 0.5 },
  });
});

test('a shaft above the pump’s with unknown shims asks for the shims', () => {
  const found = asked(shaftHeight, { base: { shimsPresentMm: null } }, { frame: '213T' });
  expect(found).toMatchObject({ by: 'reading' });
  expect(found?.reading).toContain('shims');
});

test('every shim that is taken out lowers the stack that remains', () => {
  const found = asked(shaftHeight, { base: { shimsPresentMm: 3 }, failed: failed('112M', { mounting: B3 }) });
  expect(found?.work?.what).toBe('Take 2.3 mm of shims from under each foot');
  expect(found?.says).toContain('0.7 mm');
});
