import { expect, test } from 'vitest';
import { contextOf } from '@/lib/matching/context';
import { shaftDiameter } from '@/lib/matching/criteria/mount/shaft-diameter';
import { defaultSettings } from '@/lib/matching/default-settings';
import { motor, set } from '../easy';
import { asked, failed, gradeAndWork, onGear } from './asked';

const none = { replaceable: false };
const B3 = { mounting: 'IM B3' };
const close = (frame: string | null) => ({
  mounting: 'face',
  failed: frame === null ? null : failed(frame),
  coupling: { type: 'close-coupled', hub: null },
});

// Shafts: 184T 1-1/8 in, 145T 7/8 in, 213T 1-3/8 in, 254T 1-5/8 in (MG 1 4.4.1, published), 254U 1-3/8 in (superseded
// U series), 112M 28 mm, 132S 38 mm (IEC 60072-1, published). Sleeve wall 3 mm: common practice, no source.
test.each([
  ['the same shaft', {}, {}, 'ok', null],
  ['28 mm is not 1-1/8 in', {}, { frame: '112M', ...B3 }, 'work', 'new-hub'],
  ['28 mm is not 1-1/8 in, hub fixed', { coupling: { hub: none } }, { frame: '112M', ...B3 }, 'block', null],
  [
    '28 mm is not 1-1/8 in, nothing told of the hub',
    { coupling: { hub: null } },
    { frame: '112M', ...B3 },
    'work',
    'new-hub',
  ],
  ['38 mm is not 1-1/2 in', { coupling: { hub: { ...none, boreMm: 38.1 } } }, { frame: '132S', ...B3 }, 'block', null],
  ['1-1/8 in printed and typed', { coupling: { hub: { ...none, boreMm: 28.58 } } }, {}, 'ok', null],
  ['254T for 254U', { failed: failed('254U') }, { frame: '254T' }, 'work', 'new-hub'],
  ['thinner, bushed', { coupling: { hub: { ...none, bushed: true } } }, { frame: '145T' }, 'work', 'bushing'],
  // (28.575 − 22.225 − 4.76) / 2 is 0.8 mm.
  [
    'thinner, too little left for a sleeve',
    { coupling: { hub: { ...none, sleeve: true } } },
    { frame: '145T' },
    'block',
    null,
  ],
  [
    'thinner, key unknown for a sleeve',
    { coupling: { hub: { ...none, sleeve: true, boreMm: 42 } } },
    { frame: null, measured: { shaftDiameterMm: 28 } },
    'check',
    null,
  ],
  [
    'thinner, no sleeve but a new hub',
    { coupling: { hub: { replaceable: true, sleeve: true } } },
    { frame: '145T' },
    'work',
    'new-hub',
  ],
  // (42 − 28 − 8) / 2 is 3 mm.
  [
    'thinner, just room for a sleeve',
    { coupling: { hub: { ...none, sleeve: true, boreMm: 42 } } },
    { frame: '112M', ...B3 },
    'work',
    'sleeve',
  ],
  [
    'thinner, just no room for a sleeve',
    { coupling: { hub: { ...none, sleeve: true, boreMm: 41.9 } } },
    { frame: '112M', ...B3 },
    'block',
    null,
  ],
  ['a sleeve nobody allows', { coupling: { hub: { ...none, boreMm: 42 } } }, { frame: '112M', ...B3 }, 'block', null],
  [
    'thicker, rebored within the limit',
    { coupling: { hub: { ...none, reboreToMm: 48 } } },
    { frame: '213T' },
    'work',
    'rebore',
  ],
  ['thicker, beyond the limit', { coupling: { hub: { ...none, reboreToMm: 34 } } }, { frame: '213T' }, 'block', null],
  [
    'thicker, beyond the limit, new hub',
    { coupling: { hub: { replaceable: true, reboreToMm: 34 } } },
    { frame: '213T' },
    'work',
    'new-hub',
  ],
  ['thicker, bushed', { coupling: { hub: { ...none, bushed: true } } }, { frame: '213T' }, 'work', 'bushing'],
  [
    'a sheave that may be changed',
    { coupling: { type: 'belt', hub: null, sheave: { changeable: true } } },
    { frame: '213T' },
    'work',
    'sheave',
  ],
  ['a sheave of which nothing is told', { coupling: { type: 'belt', hub: null } }, { frame: '213T' }, 'work', 'sheave'],
  [
    'a sheave that may not be changed',
    { coupling: { type: 'belt', hub: null, sheave: { changeable: false } } },
    { frame: '213T' },
    'block',
    null,
  ],
  [
    'a sheave whose bushing alone may not be replaced',
    { coupling: { type: 'belt', hub: none, sheave: { changeable: true } } },
    { frame: '213T' },
    'work',
    'sheave',
  ],
  [
    'hub measured, failed motor’s shaft does not count',
    { coupling: { hub: { ...none, boreMm: 22.225 } } },
    { frame: '145T' },
    'ok',
    null,
  ],
  [
    'motor measured wins over its frame',
    { coupling: { hub: none } },
    { measured: { shaftDiameterMm: 28 } },
    'block',
    null,
  ],
  ['no plate and no bore', { failed: null }, {}, 'check', null],
  ['no plate, bore measured', { failed: null, coupling: { hub: { boreMm: 28.575 } } }, {}, 'ok', null],
  ['frame unknown', {}, { frame: null }, 'check', null],
  ['Z voids the shaft', {}, { frame: '184TZ' }, 'check', null],
  [
    'IEC shaft that hangs on unknown poles',
    { failed: failed('225M', B3) },
    { frame: '225M', ...B3, poles: null },
    'check',
    null,
  ],
  [
    '2-pole 225M for a 4-pole one',
    { failed: failed('225M', B3), coupling: { hub: none } },
    { frame: '225M', ...B3, poles: 2 },
    'block',
    null,
  ],
  ['a J shaft in a hub', {}, { frame: '184TJ' }, 'block', null],
  ['a JM shaft in a hub', {}, { frame: '184JM' }, 'block', null],

  ['quill, the same', onGear(), { frame: '184TC', mounting: 'face' }, 'ok', null],
  ['quill, thicker', onGear({ quill: { bushing: true } }), { frame: '213TC', mounting: 'face' }, 'block', null],
  [
    'quill, thinner with a bushing',
    onGear({ quill: { bushing: true } }),
    { frame: '145TC', mounting: 'face' },
    'work',
    'quill-bushing',
  ],
  [
    'quill, thinner without a bushing',
    onGear({ quill: { bushing: false } }),
    { frame: '145TC', mounting: 'face' },
    'block',
    null,
  ],
  [
    'quill, no bushing goes between 28 mm and 1-1/8 in',
    onGear({ quill: { bushing: true } }),
    { frame: '112M', mounting: 'IM B5' },
    'block',
    null,
  ],
  [
    'a gear held by its face takes a quill unless told',
    onGear({ input: 'hub', hub: { replaceable: true } }),
    { frame: '145TC', mounting: 'face' },
    'work',
    'new-hub',
  ],

  ['JM for JM', close('182JM'), { frame: '182JM' }, 'ok', null],
  ['JM of another shaft', close('182JM'), { frame: '254JM' }, 'block', null],
  ['JP for JM', close('182JM'), { frame: '182JP' }, 'block', null],
  ['a C face with a plain shaft for JM', close('182JM'), { frame: '182TC' }, 'block', null],
  ['J for J of the same frame', close('56J'), { frame: '56J' }, 'note', null],
  ['a taper of the same frame', close('184TR'), { frame: '184TR' }, 'check', null],
  ['a hollow shaft, bores unknown', close('254TP'), { frame: '254TP' }, 'check', null],
  ['a plain shaft clamped to a pump', close('184TC'), { frame: '182TC' }, 'ok', null],
  ['a plain shaft clamped to a pump, another size', close('184TC'), { frame: '145TC' }, 'block', null],
  ['close-coupled with no plate', close(null), { frame: '182JM' }, 'check', null],
] as const)('shaft diameter: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(shaftDiameter, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a pump shaft of another type is told by its type', () => {
  expect(asked(shaftDiameter, close('182JM') as object, { frame: '182JP' })).toMatchObject({
    have: 'a JP pump shaft',
    need: 'a JM pump shaft',
    difference: null,
  });
});

test('a hub to be rebored tells from what to what', () => {
  const found = asked(shaftDiameter, { coupling: { hub: { reboreToMm: 48 } } }, { frame: '213T' });
  expect(found?.work?.what).toBe('Rebore the hub from 28.575 to 34.925 mm and cut its keyway anew');
});

test('another fit of the same nominal diameter is worth a note', () => {
  const pumpSet = set({ failed: failed('132S', B3) });
  const candidate = motor({ frame: '132M', ...B3 });
  const context = contextOf(pumpSet, candidate, { settings: defaultSettings, asOf: null });
  // A 38 mm shaft end is k6 (ISO 286-2); a hub bored for j6 stands for an older one.
  const bored = { ...context, seat: { ...context.seat, shaftFit: 'j6' } };
  expect(shaftDiameter(pumpSet, candidate, context)?.grade).toBe('ok');
  expect(shaftDiameter(pumpSet, candidate, bored)?.grade).toBe('note');
});
