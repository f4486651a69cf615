import { expect, test } from 'vitest';
import { mount } from '@/lib/review/mount/mount';
import { inPlace, row } from '../in-place';

const belt = (pitchDiameterMm: number) => ({
  coupling: { type: 'belt', ratio: 2, sheave: { pitchDiameterMm } } as const,
  load: { atPumpRpm: 875 },
});

test('on its own feet, coupled: nothing', () => {
  expect(mount(inPlace())).toBeNull();
});

test('a motor without a face where a face is told: one of the two is recorded wrong', () => {
  expect(mount(inPlace({ mounting: 'face', seat: { face: 'FF165' } }))).toMatchObject({
    urgency: 'look',
    have: 'foot',
    need: 'face',
    reading: expect.stringContaining('mounting'),
  });
});

test('a face of another kind than the one told', () => {
  // A NEMA C face has tapped holes, an IEC FF flange free ones: NEMA MG 1 4.4, IEC 60072-1.
  expect(mount(inPlace({ mounting: 'foot-and-face', seat: { face: 'FF165' } }, { frame: '184TC' }))?.says).toContain(
    'different kinds',
  );
  expect(mount(inPlace({ mounting: 'foot-and-face' }, { frame: '184TC' }))).toBeNull();
});

test('a motor made to lie that stands', () => {
  // IEC 60034-7: every turn from the position of the code is to be looked at (read in one text).
  const standing = { frame: '112M', mounting: 'IM B3', design: 'N', codeLetter: null } as const;
  expect(mount(inPlace({ shaftDirection: 'down' }, standing))).toMatchObject({
    urgency: 'plan',
    have: 'IM B3',
    need: 'down',
  });
  expect(mount(inPlace({ shaftDirection: 'down' }, { ...standing, mounting: 'IM V5' }))).toBeNull();
});

test('a sheave below the frame’s least', () => {
  // NEMA MG 1 14.42: 184T, 5 hp at 1800 rpm, 3.0 in = 76.2 mm.
  expect(mount(inPlace(belt(76.2)))).toBeNull();
  expect(mount(inPlace(belt(60)))).toMatchObject({ urgency: 'plan', have: 60, need: 76.2, unit: 'mm' });
});

test('a short shaft on a belt', () => {
  // NEMA MG 1 4.2.2, S: for direct connection (read in two texts).
  const short = { frame: '284TS', ...row({ hp: 25, rpm: 1770, amps: 30 }) };
  const found = mount(inPlace(belt(300), short));
  expect(found).toMatchObject({ urgency: 'plan', have: 'short shaft' });
  expect(found?.says).not.toContain('failed motor');
});
