import { expect, test } from 'vitest';
import { footHoles } from '@/lib/matching/criteria/mount/foot-holes';
import { asked, failed, gradeAndWork } from './asked';

const B3 = { mounting: 'IM B3' };
/** The 184T pattern as a tape would tell it, with M10 bolts. */
const seat = { holesAcrossMm: 190, holesAlongMm: 140, boltMm: 10 };

// 182T 7.5 × 4.5 in, 184T 7.5 × 5.5 in, hole 0.41 in: NEMA MG 1 4.4.1 (published). 112M 190 × 140 mm, hole 12: IEC
// 60072-1 (published). 3/8 in bolts in 0.41 in holes: MG 1 4.4.1 footnote; M10 in 12 mm: from memory.
test.each([
  ['the same frame', {}, {}, 'ok', null],
  ['112M on a 184T base', {}, { frame: '112M', ...B3 }, 'ok', null],
  ['184T on a 112M base', { failed: failed('112M', B3) }, {}, 'ok', null],
  ['132S on a 213T base', { failed: failed('213T') }, { frame: '132S', ...B3 }, 'ok', null],
  ['254T on a 160M base', { failed: failed('160M', B3) }, { frame: '254T' }, 'ok', null],
  ['254T on a 254U base', { failed: failed('254U') }, { frame: '254T' }, 'ok', null],
  ['182T on a 184T base', {}, { frame: '182T' }, 'block', null],
  [
    '182T on a 184T base that may be slotted',
    { base: { slotting: true } },
    { frame: '182T' },
    'work',
    'slot-or-redrill',
  ],
  ['no room for a transition base', { base: { transitionBase: true } }, { frame: '182T' }, 'block', null],
  ['room for a transition base', { base: { transitionBase: true } }, { frame: '145T' }, 'work', 'transition-base'],
  [
    'just room for a plate',
    { base: { transitionBase: true, shimsPresentMm: 10 } },
    { frame: '182T' },
    'work',
    'transition-base',
  ],
  [
    'just no room for a plate',
    { base: { transitionBase: true, shimsPresentMm: 9.9 } },
    { frame: '182T' },
    'block',
    null,
  ],
  [
    'slotting before a plate',
    { base: { transitionBase: true, slotting: true, shimsPresentMm: 10 } },
    { frame: '182T' },
    'work',
    'slot-or-redrill',
  ],
  ['a base with both holes, 182/4T, on 184T', {}, { frame: '182/4T' }, 'ok', null],
  ['182/4T on 182T', { failed: failed('182T') }, { frame: '182/4T' }, 'ok', null],
  ['182/4T on 182/4T', { failed: failed('182/4T') }, { frame: '182/4T' }, 'ok', null],
  ['184T where 182/4T stood', { failed: failed('182/4T') }, {}, 'check', null],
  ['213T where 182/4T stood', { failed: failed('182/4T') }, { frame: '213T' }, 'block', null],
  ['132S/M on 132M', { failed: failed('132M', B3) }, { frame: '132S/M', ...B3 }, 'ok', null],
  ['56H on a 56 base', { failed: failed('56', { codeLetter: 'K' }) }, { frame: '56H' }, 'ok', null],
  ['56 on a 56H base', { failed: failed('56H') }, { frame: '56' }, 'check', null],
  ['bolts too thick for the holes', { seat: { boltMm: 12 } }, {}, 'block', null],
  [
    'each hole off by the play',
    { seat: { ...seat, boltMm: 8 } },
    { measured: { holesAcrossMm: 192, holesAlongMm: 140, holeMm: 10 } },
    'ok',
    null,
  ],
  [
    'each hole off by more than the play',
    { seat: { ...seat, boltMm: 8 } },
    { measured: { holesAcrossMm: 192.4, holesAlongMm: 140, holeMm: 10 } },
    'block',
    null,
  ],
  [
    'both ways together more than the play',
    { seat: { ...seat, boltMm: 8 } },
    { measured: { holesAcrossMm: 191.8, holesAlongMm: 141.8, holeMm: 10 } },
    'block',
    null,
  ],
  [
    'base measured, bolts from the failed motor',
    { seat: { holesAcrossMm: 190.5, holesAlongMm: 114.3 } },
    {},
    'block',
    null,
  ],
  ['base measured, no bolt known', { failed: null, seat: { ...seat, boltMm: null } }, {}, 'check', null],
  ['no bolt known, but far off', { failed: null, seat: { ...seat, boltMm: null } }, { frame: '182T' }, 'block', null],
  ['no plate and no measure', { failed: null }, {}, 'check', null],
  ['frame unknown', {}, { frame: null }, 'check', null],
  [
    'frame unknown, spacing measured',
    {},
    { frame: null, measured: { holesAcrossMm: 190.5, holesAlongMm: 139.7 } },
    'check',
    null,
  ],
  [
    'frame unknown, all measured',
    {},
    { frame: null, measured: { holesAcrossMm: 190.5, holesAlongMm: 139.7, holeMm: 10.4 } },
    'ok',
    null,
  ],
  ['a foot length not told', { failed: failed('132M', B3) }, { frame: '132', ...B3 }, 'check', null],
  ['Y voids the feet', {}, { frame: '184TY' }, 'check', null],
] as const)('foot holes: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(footHoles, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('foot holes are not asked of a motor held by its face alone', () => {
  expect(asked(footHoles, { mounting: 'face' })).toBeNull();
});

test('a misfit tells how far each hole is off and to look for a second set of holes', () => {
  const found = asked(footHoles, {}, { frame: '182T' });
  // Half of 5.5 − 4.5 in.
  expect(found?.says).toContain('12.7 mm along');
  expect(found?.says).toContain('look for a second set of holes');
});

test.each([
  ['along alone', '182T', 'Each hole is off its bolt by 12.7 mm along:'],
  // Halves of the spacings less 7.5 × 5.5 in of 184T: 213T has 8.5 × 5.5 in, 254T 10 × 8.25 in (NEMA MG 1-2016 4.4.1).
  ['across alone', '213T', 'Each hole is off its bolt by 12.7 mm across:'],
  ['both ways', '254T', 'Each hole is off its bolt by 31.75 mm across and 34.93 mm along:'],
] as const)('a misfit tells only the way it is off: %s', (_, frame, says) => {
  expect(asked(footHoles, {}, { frame })?.says).toContain(says);
});

test('a transition base without height for its plate is refused in figures', () => {
  const at = (shimsPresentMm: number) =>
    asked(footHoles, { base: { transitionBase: true, shimsPresentMm } }, { frame: '182T' })?.says;
  expect(at(0)).toContain('There is no height under its feet for a transition base, which takes at least 10 mm.');
  expect(at(1.5)).toContain('The height of 1.5 mm under its feet is too little for a transition base');
});
