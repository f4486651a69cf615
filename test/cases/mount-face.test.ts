import { expect, test } from 'vitest';
import { expectMount } from './mount-case';
import { iec, judged, nema } from './whole-case';

// Faces in inches of NEMA MG 1-2016 4.4.4 (C), Table 18-33 and 18-34 (JM, JP), in mm of IEC 60072-1 and EN 50347 (FF, FT).
// A gear of ratio 1 and 95 % with a quill: 3 kW / 0.95 = 3.16 of 3.73 kW; nothing but the mount stands in the way.
const gear = (depthMm: number | null, bushing: boolean | null = null) => ({
  mounting: 'face',
  coupling: { type: 'gear', efficiencyPct: 95, hub: null, quill: { depthMm, bushing } },
});
const FACE = { mounting: ['ok', 'face', 'face'] } as const;

test('182TC, 184TC, 182C, 182TCH: which goes in the quill of a 182TC', () => {
  // 182TC and 184TC: AJ 7.25, AK 8.5, U 1.125 = 28.575, N-W 2.75 less BC 0.12 = 66.802, S 0.25. The feet of a 184TC are untold: a note.
  const ask = (frame: string) =>
    judged(nema, {
      failed: { frame: '182TC', mounting: 'face' },
      motor: { frame, mounting: 'face' },
      set: gear(75, true),
    });
  expectMount(ask('184TC'), {
    ...FACE,
    'shaft-diameter': ['ok', 28.575, 28.575],
    'shaft-length': ['ok', 66.802, 75],
    key: ['ok', 6.35, 6.35],
    face: ['ok', '184TC', '182TC'],
  });
  expect(ask('184TC').verdict).toBe('straight-swap');
  // 182TCH: AJ 5.875, AK 4.5, the same shaft.
  expectMount(ask('182TCH'), {
    ...FACE,
    'shaft-diameter': ['ok', 28.575, 28.575],
    'shaft-length': ['ok', 66.802, 75],
    key: ['ok', 6.35, 6.35],
    face: ['block', '182TCH', '182TC'],
  });
  // 182C: AJ 5.875, AK 4.5, U 0.875 = 22.225, AH 2.125 = 53.975 of 66.548 (0.81), S 0.188 = 4.775; wall 3.175: a bushing.
  expectMount(ask('182C'), {
    ...FACE,
    'shaft-diameter': ['work', 22.225, 28.575, 'quill-bushing'],
    'shaft-length': ['ok', 53.975, 75],
    key: ['ok', 4.775, 6.35],
    face: ['block', '182C', '182TC'],
  });
  // A plain 182T has no face at all.
  const plain = judged(nema, { failed: { frame: '182TC', mounting: 'face' }, motor: { frame: '182T' }, set: gear(75) });
  expect(plain.of('mounting')).toMatchObject({ grade: 'block' });
  expect(plain.of('face')).toMatchObject({ grade: 'block', need: '182TC' });
});

test('a 143TC for a 56C: the same face, a thicker shaft that no quill takes', () => {
  // Both AJ 5.875, AK 4.5, BD 6.5, 3/8-16. 56C: U 0.625 = 15.875, AH 2.06 = 52.324; 143TC: 0.875 = 22.225, 2.25 less BC 0.12 = 54.102.
  const found = judged(nema, {
    failed: { frame: '56C' },
    motor: { frame: '143TC' },
    set: gear(60, true),
  });
  expectMount(found, {
    mounting: ['note', null, 'face'],
    'shaft-diameter': ['block', 22.225, 15.875],
    'shaft-length': ['ok', 54.102, 60],
    key: ['ok', 4.775, 4.775],
    face: ['ok', '143TC', '56C'],
  });
  expect(found).toMatchObject({ verdict: 'unsuitable', hours: 2 });
});

test('a JP pump shaft is no JM, and a JM is no plain C face', () => {
  // 184JM: AH 4.25, U 0.8745 = 22.212, AJ 5.875; 184JP: AH 7.312 = 185.725. 213JM: AJ 7.25, the same shaft as 184JM.
  const close = { mounting: 'face', coupling: { type: 'close-coupled', hub: null } };
  const ask = (frame: string, failed = '184JM') =>
    judged(nema, { failed: { frame: failed }, motor: { frame }, set: close });
  expectMount(ask('184JM'), {
    mounting: ['note', null, 'face'],
    'shaft-diameter': ['ok', 22.212, 22.212],
    'shaft-length': ['ok', 107.95, 107.95],
    key: ['ok', 4.775, 4.775],
    face: ['ok', '184JM', '184JM'],
  });
  expect(ask('184JM').verdict).toBe('straight-swap');
  expect(ask('182JM').verdict).toBe('straight-swap');
  expectMount(ask('184JP'), {
    mounting: ['note', null, 'face'],
    'shaft-diameter': ['block', 'a JP pump shaft', 'a JM pump shaft'],
    'shaft-length': ['block', 185.725, 107.95],
    key: ['ok', 4.775, 4.775],
    face: ['ok', '184JP', '184JM'],
  });
  expect(ask('213JM').of('face')).toMatchObject({ grade: 'block' });
  expect(ask('213JM').of('shaft-diameter')).toMatchObject({ grade: 'ok' });
  expect(ask('182TCH').of('shaft-diameter')).toMatchObject({ grade: 'block', have: 'a plain shaft' });
  // 254JM: 1.2495 in: another size of the same type.
  expect(ask('254JM', '213JM').of('shaft-diameter')).toMatchObject({ grade: 'block', difference: 9.525 });
});

test('FF165 in place of FF215, and the quill that goes with it', () => {
  // 90L B5: FF165 (M 165, N 130), 24 × 50; 100L B5: FF215 (215, 180), 28 × 60; 80 B5: FF165, 19 × 40, key 6.
  const ask = (frame: string, bushing: boolean | null = null) =>
    judged(iec, { failed: { frame: '90L' }, both: { mounting: 'IM B5' }, motor: { frame }, set: gear(55, bushing) });
  expectMount(ask('90S'), {
    ...FACE,
    'shaft-diameter': ['ok', 24, 24],
    'shaft-length': ['ok', 50, 55],
    key: ['ok', 8, 8],
    face: ['ok', 'FF165', 'FF165'],
  });
  expect(ask('90S').verdict).toBe('straight-swap');
  expectMount(ask('100L'), {
    ...FACE,
    'shaft-diameter': ['block', 28, 24],
    'shaft-length': ['block', 60, 55],
    key: ['ok', 8, 8],
    face: ['block', 'FF215', 'FF165'],
  });
  // 19 in 24: 2.5 mm of wall; 40 is 0.8 of the old 50.
  expectMount(ask('80', true), {
    ...FACE,
    'shaft-diameter': ['work', 19, 24, 'quill-bushing'],
    'shaft-length': ['ok', 40, 55],
    key: ['ok', 6, 8],
    face: ['ok', 'FF165', 'FF165'],
  });
  expect(ask('80', true)).toMatchObject({ verdict: 'swap-with-work', hours: 4 });
  expect(ask('80').of('shaft-diameter')).toMatchObject({ grade: 'block', difference: -5, work: null });
});

test('28 mm is not 1-1/8 in, in a quill either way', () => {
  const into = (frame: string, boreMm: number) =>
    judged(iec, {
      failed: null,
      motor: { frame, mounting: null },
      set: { ...gear(80, true), seat: { face: '182TC' }, coupling: { ...gear(80, true).coupling, hub: { boreMm } } },
    }).of('shaft-diameter');
  expect(into('182TC', 28)).toMatchObject({ grade: 'block', have: 28.575, need: 28, difference: 0.575 });
  expect(into('182TC', 28.575)).toMatchObject({ grade: 'ok' });
});

test('free holes, tapped holes, the larger tapped flange and a C face are four things', () => {
  // 112M: B14 has FT130 (M 130); FT165 is the larger one; B5 has FF215. 184TC: AJ 184.15.
  const ask = (motor: { frame: string; mounting: string | null }) =>
    judged(iec, { failed: { mounting: 'IM B14' }, motor, set: gear(70) });
  expectMount(ask({ frame: '112M', mounting: 'IM B14' }), {
    ...FACE,
    'shaft-diameter': ['ok', 28, 28],
    'shaft-length': ['ok', 60, 70],
    key: ['ok', 8, 8],
    face: ['ok', 'FT130', 'FT130'],
  });
  expect(ask({ frame: '112M', mounting: 'IM B5' }).of('face')).toMatchObject({
    grade: 'block',
    have: 'FF215',
    need: 'FT130',
  });
  expect(ask({ frame: '112M FT165', mounting: 'IM B14' }).of('face')).toMatchObject({ grade: 'block', have: 'FT165' });
  expect(ask({ frame: '182TC', mounting: null }).of('face')).toMatchObject({
    grade: 'block',
    have: '182TC',
    need: 'FT130',
  });
  // FF165 and FT165 share bolt circle, spigot and outside: the holes are another kind.
  const kind = judged(iec, {
    failed: { frame: '90L', mounting: 'IM B5' },
    motor: { frame: '132S', mounting: 'IM B14' },
    set: gear(90),
  });
  expect(kind.of('face')).toMatchObject({ grade: 'block', have: 'FT165', need: 'FF165' });
  // The face told at the set wins over the failed motor's plate.
  const told = judged(iec, { both: { mounting: 'IM B5' }, set: { ...gear(70), seat: { face: 'FF165' } } });
  expect(told.of('face')).toMatchObject({ grade: 'block', have: 'FF215', need: 'FF165' });
});
