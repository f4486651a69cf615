import { expect, test } from 'vitest';
import { face } from '@/lib/matching/criteria/mount/face';
import { asked, failed } from './asked';

const on = (told: string | null, was: string | null = null, mounting: string | null = null) => ({
  mounting: 'face',
  seat: { face: told },
  failed: was === null ? null : failed(was, { mounting }),
});
const is = (frame: string, mounting: string | null = null) => ({ frame, mounting });

// C faces: 143TC 5.875/4.5 in, 182TC 7.25/8.5 in, 182TCH 5.875/4.5 in (MG 1 4.4.4, published); 182C 5.875/4.5 in
// (superseded U series). FF165 165/130/200 mm, FF215, FT130, FT165 (IEC 60072-1, published); 90 takes FF165, 112 FF215
// and FT130 (EN 50347, published).
test.each([
  ['the same C face', on(null, '184TC'), is('184TC'), 'ok'],
  ['182TC and 184TC have one face', on('182TC'), is('184TC'), 'ok'],
  ['56C and 143TC have one face', on('56C'), is('145TC'), 'ok'],
  ['182TCH is not 182TC', on('182TC'), is('182TCH'), 'block'],
  ['182C is not 182TC', on('182TC'), is('182C'), 'block'],
  ['184TCH bolts to a 145TC face', on('145TC'), is('184TCH'), 'ok'],
  ['D has through holes where C is tapped', on('184TC'), is('184TD'), 'block'],
  ['FF165 for FF165', on('FF165'), is('90L', 'IM B5'), 'ok'],
  ['FF215 for FF165', on('FF165'), is('112M', 'IM B5'), 'block'],
  ['FT165 is not FF165', on('FF165'), is('112M FT165', 'IM B14'), 'block'],
  ['FF165 is not FT165', on('FT165'), is('90L', 'IM B5'), 'block'],
  ['standard FT for standard FT', on('FT130'), is('112M', 'IM B14'), 'ok'],
  ['larger FT for standard FT', on('FT130'), is('112M FT165', 'IM B14'), 'block'],
  ['a C face for FF165', on('FF165'), is('184TC'), 'block'],
  ['FF215 for a C face', on(null, '184TC'), is('112M', 'IM B5'), 'block'],
  ['told at the set wins over the failed motor', on('FF165', '112M', 'IM B5'), is('112M', 'IM B5'), 'block'],
  ['the failed motor’s flange', on(null, '112M', 'IM B5'), is('112M', 'IM B35'), 'ok'],
  ['a foot motor', on('184TC'), is('184T'), 'block'],
  ['flange of unknown number', on('FT265'), is('180M', 'IM B14'), 'check'],
  ['mounting unknown', on('FF215'), is('112M'), 'check'],
  ['frame unknown', on('FF215'), { frame: null }, 'check'],
  ['Y voids the face', on('184TC'), is('184TCY'), 'check'],
  ['face told, but unreadable', on('round'), is('184TC'), 'check'],
  ['face unknown', on(null), is('184TC'), 'check'],
  ['bolt circle measured off', on('184TC'), { ...is('184TC'), measured: { pitchCircleMm: 150 } }, 'block'],
  ['spigot measured off', on('184TC'), { ...is('184TC'), measured: { spigotMm: 215.5 } }, 'block'],
  ['spigot measured the same', on('184TC'), { ...is('184TC'), measured: { spigotMm: 215.9 } }, 'ok'],
  ['larger outside', on('184TC'), { ...is('184TC'), measured: { faceDiameterMm: 250 } }, 'check'],
  ['smaller outside', on('184TC'), { ...is('184TC'), measured: { faceDiameterMm: 220 } }, 'note'],
] as const)('face: %s', (_, ofSet, ofMotor, grade) => {
  expect(asked(face, ofSet as object, ofMotor as object)?.grade).toBe(grade);
});

test('a face is not asked of a motor held by its feet alone', () => {
  expect(asked(face, {}, { frame: '184TC' })).toBeNull();
});

test('a face of another kind names the figures of both', () => {
  const says = asked(face, on('FF165') as object, { frame: '184TC' })?.says;
  expect(says).toContain('165 mm bolt circle, 130 mm spigot');
  expect(says).toContain('184.15 mm bolt circle, 215.9 mm spigot, 4 holes tapped 1/2-13');
});

test('an unreadable face is quoted back', () => {
  expect(asked(face, on('round') as object, { frame: '184TC' })?.says).toContain('"round"');
});
