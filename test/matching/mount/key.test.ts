import { expect, test } from 'vitest';
import { key } from '@/lib/matching/criteria/mount/key';
import { asked, failed, gradeAndWork, onGear } from './asked';

// Key widths: 184T 1/4 in (6.35 mm), 145T 3/16 in: MG 1 4.4.1 (published). 112M 8 mm: DIN 6885-1 (published). Stepped
// keys: common practice, no source.
test.each([
  ['the same key', {}, {}, 'ok', null],
  [
    '3/16 in printed 0.188 and typed 4.76',
    { coupling: { hub: { boreMm: 22.225, keyWidthMm: 4.76 } } },
    { frame: '145T' },
    'ok',
    null,
  ],
  [
    '5/16 in is not 8 mm',
    { failed: failed('213T'), coupling: { hub: { keyWidthMm: 8 } } },
    { frame: '213T' },
    'work',
    'step-key',
  ],
  ['the hub’s keyway told', { coupling: { hub: { keyWidthMm: 8 } } }, {}, 'work', 'step-key'],
  ['new hub', {}, { frame: '112M', mounting: 'IM B3' }, 'ok', null],
  ['new bushing', { coupling: { hub: { bushed: true } } }, { frame: '145T' }, 'ok', null],
  ['rebored hub', { coupling: { hub: { reboreToMm: 48 } } }, { frame: '213T' }, 'ok', null],
  ['sleeve', { coupling: { hub: { boreMm: 42, sleeve: true } } }, { frame: '112M', mounting: 'IM B3' }, 'ok', null],
  ['reducer bushing', onGear({ quill: { bushing: true } }), { frame: '145TC', mounting: 'face' }, 'ok', null],
  [
    'new sheave',
    { coupling: { type: 'belt', hub: null, sheave: { changeable: true } } },
    { frame: '213T' },
    'ok',
    null,
  ],
  ['hub fixed', { coupling: { hub: { replaceable: false } } }, { frame: '145T' }, 'work', 'step-key'],
  ['key unknown', {}, { frame: null }, 'check', null],
  ['keyway of the hub unknown', { failed: null, coupling: { hub: { boreMm: 28.575 } } }, {}, 'check', null],
  ['a flat, like for like', { failed: failed('48') }, { frame: '48' }, 'ok', null],
  [
    'a flat in a keyed hub',
    { failed: failed('56', { codeLetter: 'K' }) },
    { frame: '48', measured: { shaftDiameterMm: 15.875 } },
    'check',
    null,
  ],
  ['special shafts of the same frame', { failed: failed('184TZ') }, { frame: '184TZ' }, 'check', null],
  [
    'plain shaft clamped to a pump',
    { mounting: 'face', failed: failed('184TC'), coupling: { type: 'close-coupled', hub: null } },
    { frame: '184TC', measured: { keyWidthMm: 8 } },
    'block',
    null,
  ],
] as const)('key: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(key, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a key is not asked of a threaded shaft', () => {
  expect(asked(key, { failed: failed('56J') }, { frame: '56J' })).toBeNull();
});
