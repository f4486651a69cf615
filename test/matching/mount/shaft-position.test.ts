import { expect, test } from 'vitest';
import { shaftPosition } from '@/lib/matching/criteria/mount/shaft-position';
import { asked, failed, gradeAndWork } from './asked';

/** A motor whose shaft ends this far from the drive-end holes; the shaft itself 69.85 mm as on a 184T. */
const ends = (mm: number) => ({ measured: { holeToShoulderMm: mm - 69.85, shaftLengthMm: 69.85 } });
const hub = { lengthMm: 60, replaceable: true };
const fixed = { lengthMm: 60, replaceable: false };

// 184T: BA 2.75 in + N-W 2.75 in = 139.7 mm (NEMA MG 1 4.4.1, published). 112M: C 70 + E 60 = 130 mm (published).
// 184TC with feet: BA 3.5 in (MG 1 4.4.4, published). 0.8 carried and 3 mm: common practice, no source.
test.each([
  ['the same place', {}, {}, 'ok', null],
  ['112M for 184T', {}, { frame: '112M', mounting: 'IM B3' }, 'note', null],
  ['hub overhangs by 0.2 of its length', {}, ends(127.7), 'note', null],
  ['further, spacer', { coupling: { hub } }, ends(127), 'work', 'spacer-coupling'],
  ['further, the gap may open', { coupling: { hub, gapMm: 3, gapMaxMm: 5 } }, ends(126), 'note', null],
  [
    'further, hub fixed, base may be drilled',
    { coupling: { hub: fixed }, base: { slotting: true } },
    ends(127),
    'work',
    'move-base',
  ],
  [
    'further, whether the hub may be replaced untold',
    { coupling: { hub: { lengthMm: 60 } } },
    ends(127),
    'work',
    'spacer-coupling',
  ],
  // A 69.85 mm shaft carried no hub longer than 69.85 / 0.8 = 87.3 mm: 17.46 mm overhangs at most.
  [
    'further, hub length unknown, no hub would overhang so far',
    { coupling: { hub: null } },
    ends(122.2),
    'work',
    'spacer-coupling',
  ],
  ['further, hub length unknown, the longest would', { coupling: { hub: null } }, ends(122.3), 'check', null],
  [
    'further, hub length unknown, beyond its overhang and the gap',
    { coupling: { hub: null, gapMm: 3, gapMaxMm: 8 } },
    ends(117.2),
    'work',
    'spacer-coupling',
  ],
  [
    'nearer, gap unknown, on a transition base',
    { coupling: { hub: null }, base: { transitionBase: true, shimsPresentMm: 10 } },
    ends(150),
    'work',
    'transition-base',
  ],
  [
    'nearer, gap unknown, no room for a transition base',
    { coupling: { hub: null }, base: { transitionBase: true, shimsPresentMm: 9.9 } },
    ends(150),
    'check',
    null,
  ],
  ['further, nothing told', { coupling: { hub: fixed } }, ends(127), 'check', null],
  [
    'further, cured by a transition base',
    { base: { transitionBase: true } },
    { frame: '145T' },
    'work',
    'transition-base',
  ],
  ['further, hub length unknown', { coupling: { hub: null } }, ends(127.7), 'check', null],
  ['nearer, the shaft leaves room for the hub', {}, ends(149.5), 'note', null],
  [
    'nearer, room on the shaft but not in the gap',
    { coupling: { hub, gapMm: 5, gapMinMm: 2 } },
    ends(149.5),
    'check',
    null,
  ],
  ['nearer, no room, gap unknown', { coupling: { hub } }, ends(149.6), 'check', null],
  ['nearer by 3 mm, hub and gap unknown', { coupling: { hub: null } }, ends(142.7), 'note', null],
  ['nearer by over 3 mm, hub and gap unknown', { coupling: { hub: null } }, ends(142.8), 'check', null],
  [
    'nearer, the gap closes to its least',
    { coupling: { hub: null, gapMm: 8, gapMinMm: 3 } },
    ends(144.7),
    'note',
    null,
  ],
  [
    'nearer, the gap would close below its least',
    { coupling: { hub: null, gapMm: 8, gapMinMm: 3 } },
    ends(144.8),
    'block',
    null,
  ],
  [
    'nearer, base may be drilled',
    { coupling: { hub: null, gapMm: 8, gapMinMm: 3 }, base: { slotting: true } },
    ends(150),
    'work',
    'move-base',
  ],
  ['184TC with feet for 184T', {}, { frame: '184TC', mounting: 'foot and face' }, 'check', null],
  ['belt: the sheave is slid', { coupling: { type: 'belt' } }, ends(127), 'note', null],
  [
    'held by its face too: no hub slides',
    { mounting: 'foot-and-face', coupling: { type: 'gear', hub: null } },
    ends(145),
    'check',
    null,
  ],
  ['seat measured', { seat: { holeToShaftEndMm: 130 } }, { frame: '112M', mounting: 'IM B3' }, 'ok', null],
  ['no plate and no measure', { failed: null }, {}, 'check', null],
  ['frame unknown', {}, { frame: null }, 'check', null],
  ['Z voids the shaft', {}, { frame: '184TZ' }, 'check', null],
  ['182T for 184T', { failed: failed('182T') }, {}, 'ok', null],
] as const)('shaft position: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(shaftPosition, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a shaft position is not asked of a motor held by its face alone', () => {
  expect(asked(shaftPosition, { mounting: 'face' })).toBeNull();
});

test('a positive difference is nearer the pump', () => {
  expect(asked(shaftPosition, {}, { frame: '184TC', mounting: 'foot and face' })).toMatchObject({
    have: 158.75,
    need: 139.7,
    difference: 19.05,
  });
});
