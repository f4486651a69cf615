import { expect, test } from 'vitest';
import { mounting } from '@/lib/matching/criteria/mount/mounting';
import { asked, failed } from './asked';

const is = (frame: string | null, code: string | null = null) => ({ frame, mounting: code });
const was = (frame: string, code: string | null = null) => failed(frame, { mounting: code });

// Codes: IEC 60034-7 (read in two texts). Face diameters: 184TC 9 in, FF215 250 mm, FF165 200 mm, FT130 160 mm, against
// shaft heights of 114.3, 112 and 90 mm (published).
test.each([
  ['feet for feet', {}, {}, 'ok'],
  ['B3 for feet', {}, is('112M', 'IM B3'), 'ok'],
  ['no feet', {}, is('112M', 'IM B5'), 'block'],
  ['no feet, told in words', {}, is('184TC', 'face'), 'block'],
  ['feet unknown of a C face', {}, is('184TC'), 'check'],
  ['feet unknown of an IEC frame', {}, is('112M'), 'check'],
  ['frame unknown', {}, is(null), 'check'],
  ['frame unknown, code known', {}, is(null, 'IM B3'), 'ok'],

  ['C face not used, above the foot plane', {}, is('184TC', 'foot and face'), 'ok'],
  ['FT not used, above the foot plane', {}, is('112M', 'IM B34'), 'ok'],
  ['FF not used, below the foot plane', {}, is('112M', 'IM B35'), 'check'],
  ['FF not used, as the failed motor had', { failed: was('112M', 'IM B35') }, is('112M', 'IM B35'), 'note'],
  ['FF not used, larger than the failed motor had', { failed: was('112M', 'IM B34') }, is('112M', 'IM B35'), 'check'],
  ['flange not used, size unknown', {}, is('180M', 'IM B34'), 'check'],

  ['face for face', { mounting: 'face', failed: was('112M', 'IM B5') }, is('112M', 'IM B5'), 'ok'],
  ['no face', { mounting: 'face' }, is('184T'), 'block'],
  ['face unknown', { mounting: 'face' }, is('112M'), 'check'],
  [
    'feet not used, nobody knows whether they clear',
    { mounting: 'face', failed: was('112M', 'IM B5') },
    is('112M', 'IM B35'),
    'check',
  ],
  [
    'feet not used, the failed motor had them',
    { mounting: 'face', failed: was('112M', 'IM B35') },
    is('112M', 'IM B35'),
    'note',
  ],
  [
    'feet not used, larger than the failed motor had',
    { mounting: 'face', failed: was('112M', 'IM B35') },
    is('132S', 'IM B35'),
    'check',
  ],
  ['feet not told of a C face', { mounting: 'face', failed: was('184TC') }, is('184TC'), 'note'],
  ['both for both', { mounting: 'foot-and-face' }, is('112M', 'IM B35'), 'ok'],
  ['feet alone for both', { mounting: 'foot-and-face' }, is('112M', 'IM B3'), 'block'],
  ['face alone for both', { mounting: 'foot-and-face' }, is('112M', 'IM B5'), 'block'],

  [
    'V1 with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: was('112M', 'IM V1') },
    is('112M', 'IM V1'),
    'ok',
  ],
  [
    'B5/V1 with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: was('112M', 'IM V1') },
    is('112M', 'IM B5/V1'),
    'ok',
  ],
  [
    'B5 with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: was('112M', 'IM V1') },
    is('112M', 'IM B5'),
    'check',
  ],
  [
    'V1 with the shaft up',
    { mounting: 'face', shaftDirection: 'up', failed: was('112M', 'IM V3') },
    is('112M', 'IM V1'),
    'check',
  ],
  ['V1 with a horizontal shaft', { mounting: 'face', failed: was('112M', 'IM B5') }, is('112M', 'IM V1'), 'check'],
  [
    'down by the failed motor’s code',
    { mounting: 'face', shaftDirection: null, failed: was('112M', 'IM V1') },
    is('112M', 'IM B5'),
    'check',
  ],
  ['direction unknown', { shaftDirection: null }, {}, 'ok'],
  ['B3 with the shaft down', { shaftDirection: 'down', failed: was('112M', 'IM V5') }, is('112M', 'IM B3'), 'check'],
  ['V5 with the shaft down', { shaftDirection: 'down', failed: was('112M', 'IM V5') }, is('112M', 'IM V5'), 'ok'],
  ['B3 with its feet on a wall', { failed: was('112M', 'IM B6') }, is('112M', 'IM B3'), 'check'],
  ['B6 with its feet on a wall', { failed: was('112M', 'IM B6') }, is('112M', 'IM B6'), 'ok'],
  ['B3 under a ceiling', { failed: was('112M', 'IM B8') }, is('112M', 'IM B3'), 'check'],
  ['B6 on the floor', { failed: was('112M', 'IM B3') }, is('112M', 'IM B6'), 'check'],
  [
    'C face with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: was('182TC') },
    is('184TC'),
    'check',
  ],
  [
    'the same C face with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: was('184TC') },
    is('184TC'),
    'note',
  ],
] as const)('mounting: %s', (_, ofSet, ofMotor, grade) => {
  expect(asked(mounting, ofSet as object, ofMotor as object)?.grade).toBe(grade);
});

test('a face below the feet asks whether it clears, with the overhang', () => {
  const found = asked(mounting, {}, is('112M', 'IM B35'));
  // 250 / 2 − 112
  expect(found?.says).toBe('Its face reaches 13 mm below the feet: does it clear the base?');
  expect(found?.by).toBe('reading');
});

test('a turned motor is for a competent person', () => {
  const found = asked(mounting, { shaftDirection: 'down' }, is('112M', 'IM B3'));
  expect(found).toMatchObject({ grade: 'check', by: 'person' });
});
