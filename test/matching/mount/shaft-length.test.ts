import { expect, test } from 'vitest';
import { shaftLength } from '@/lib/matching/criteria/mount/shaft-length';
import { asked, failed, gradeAndWork, onGear } from './asked';

const face = { mounting: 'face' };
const belt = (frame = '286T') => ({ failed: failed(frame), coupling: { type: 'belt', hub: null } });
const bellHousing = (ofCoupling: object = {}) => ({
  mounting: 'face',
  failed: failed('184TC', face),
  coupling: { type: 'coupling', ...ofCoupling },
});
/** A 184TC whose shaft is this long from its shoulder; the face lies 0.12 in (3.05 mm) before the shoulder. */
const long = (shaftLengthMm: number) => ({ frame: '184TC', ...face, measured: { shaftLengthMm } });

// N-W: 184T 2.75 in (69.85 mm), 145T 2.25 in; AH of 184TC 2.62 in (66.55 mm): MG 1 4.4.1 and 4.4.4 (published). S after
// T is a short shaft for direct drive: MG 1 4.2.2 (published). 0.8 carried: common practice, no source.
test.each([
  ['the whole hub carried', {}, {}, 'ok', null],
  ['just carried', { coupling: { hub: { lengthMm: 69.85 } } }, {}, 'ok', null],
  ['0.95 of the hub carried', {}, { frame: '145T' }, 'note', null],
  ['0.8 of the hub carried', { coupling: { hub: { lengthMm: 87.3125 } } }, {}, 'note', null],
  ['less than 0.8 of the hub carried', { coupling: { hub: { lengthMm: 88 } } }, {}, 'block', null],
  [
    'less than 0.8, but the hub is new anyway',
    { coupling: { hub: { lengthMm: 80, replaceable: true } } },
    { frame: '145T' },
    'work',
    'new-hub',
  ],
  ['shaft length unknown', {}, { frame: null }, 'check', null],
  ['Z voids the shaft', {}, { frame: '184TZ' }, 'check', null],
  ['motor measured wins over its frame', {}, { measured: { shaftLengthMm: 40 } }, 'block', null],

  ['belt on a long shaft', belt(), { frame: '286T' }, 'ok', null],
  ['belt on a short shaft', belt(), { frame: '286TS' }, 'block', null],
  ['belt on a short shaft, as before', belt('286TS'), { frame: '286TS' }, 'block', null],
  ['belt, frame unknown', belt(), { frame: null }, 'check', null],
  ['short shaft on a coupling', { failed: failed('286TS') }, { frame: '286TS' }, 'ok', null],

  ['quill, as deep', onGear({ quill: { depthMm: 70 } }), { frame: '184TC', ...face }, 'ok', null],
  // AH of 184TC is printed 2.62 in (66.55 mm), N-W less BC 2.63 in.
  ['quill, as deep as printed', onGear({ quill: { depthMm: 66.55 } }), { frame: '184TC', ...face }, 'ok', null],
  ['quill, too shallow', onGear({ quill: { depthMm: 66 } }), { frame: '184TC', ...face }, 'block', null],
  ['quill, less deep by a fifth and more', onGear({ quill: { depthMm: 70 } }), long(50), 'check', null],
  ['quill, depth unknown, as the old one', onGear(), { frame: '184TC', ...face }, 'ok', null],
  ['quill, depth unknown, longer', onGear(), long(75), 'check', null],
  ['quill, depth unknown, a little shorter', onGear(), long(65), 'note', null],
  ['quill, depth unknown, much shorter', onGear(), long(50), 'check', null],
  ['quill, no plate and no depth', { ...onGear(), failed: null }, { frame: '184TC', ...face }, 'check', null],
  ['quill, frame unknown', onGear({ quill: { depthMm: 70 } }), { frame: null }, 'check', null],

  ['bell housing, as the old one', bellHousing(), { frame: '182TC', ...face }, 'ok', null],
  ['bell housing, shorter by less than 0.2 of the hub', bellHousing(), long(60), 'note', null],
  ['bell housing, shorter by more', bellHousing(), long(57), 'block', null],
  ['bell housing, shorter, hub length unknown', bellHousing({ hub: null }), long(60), 'check', null],
  ['bell housing, longer, gap unknown', bellHousing(), long(73), 'check', null],
  ['bell housing, longer within the gap', bellHousing({ gapMm: 8, gapMinMm: 3 }), long(73), 'note', null],
  ['bell housing, longer than the gap', bellHousing({ gapMm: 5, gapMinMm: 3 }), long(73), 'block', null],

  [
    'pump shaft, another length',
    { mounting: 'face', failed: failed('182JM'), coupling: { type: 'close-coupled', hub: null } },
    { frame: '182JP' },
    'block',
    null,
  ],
  [
    'pump shaft, the same',
    { mounting: 'face', failed: failed('182JM'), coupling: { type: 'close-coupled', hub: null } },
    { frame: '182JM' },
    'ok',
    null,
  ],
] as const)('shaft length: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(shaftLength, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a shaft length is not asked of a coupled foot motor when the set states no hub length', () => {
  expect(asked(shaftLength, { coupling: { hub: null } })).toBeNull();
});

test('a hub that would be too long is ordered to length', () => {
  const found = asked(shaftLength, { coupling: { hub: { lengthMm: 80, replaceable: true } } }, { frame: '145T' });
  expect(found?.work?.what).toContain('no longer than 57.15 mm');
});
