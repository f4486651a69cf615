import { expect, test } from 'vitest';
import { expectMount, SHAFT, TWIN } from './mount-case';
import { judged, nema, standing } from './whole-case';

// What is measured, voided or unknown. Inches of NEMA MG 1-2016 4.4.1 and 4.4.4, times 25.4. The base case is a 184T for a 184T (figures in mount-case.ts).

test('184TY: Y voids feet and face, what a person measured is good again', () => {
  const found = judged(nema, { motor: { frame: '184TY' } });
  expectMount(found, {
    mounting: ['check', null, 'foot', 'reading'],
    'shaft-height': ['check', null, 114.3, 'reading'],
    'foot-holes': ['check', null, '190.5 × 139.7', 'reading'],
    'shaft-position': ['check', null, 139.7, 'reading'],
    ...SHAFT,
  });
  const measured = {
    shaftHeightMm: 112.3,
    holesAcrossMm: 190.5,
    holesAlongMm: 139.7,
    holeMm: 10.4,
    holeToShoulderMm: 69.85,
  };
  const known = judged(nema, { motor: { frame: '184TY', mounting: 'IM B3', measured } });
  expectMount(known, { ...TWIN, 'shaft-height': ['work', 112.3, 114.3, 'shims'] });
  expect(known).toMatchObject({ verdict: 'swap-with-work', hours: 2.5 });
});

test('184TZ: Z voids the shaft, a caliper brings it back', () => {
  const found = judged(nema, { motor: { frame: '184TZ' } });
  expectMount(found, {
    ...TWIN,
    'shaft-position': ['check', null, 139.7, 'reading'],
    'shaft-diameter': ['check', null, 28.575, 'reading'],
    'shaft-length': ['check', null, 60, 'reading'],
    key: ['check', null, 6.35, 'reading'],
  });
  const measured = { shaftDiameterMm: 28.58, shaftLengthMm: 69.85, keyWidthMm: 6.35 };
  const known = judged(nema, { motor: { frame: '184TZ', measured } });
  expectMount(known, TWIN);
  expect(known.verdict).toBe('straight-swap');
});

test('a 56 in place of a 184T: bolts too thick for its holes, and the holes elsewhere', () => {
  // 1.5 + 25.4 = 26.9 mm of plate. Ends 117.602 for 139.7. A shaft of 47.752 carries less than 0.8 of a hub of 60 (48).
  const found = judged(nema, { motor: { frame: '56', codeLetter: 'J' }, set: { base: { transitionBase: true } } });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['work', 88.9, 114.3, 'transition-base'],
    'foot-holes': ['work', '123.95 × 76.2', '190.5 × 139.7', 'transition-base'],
    'shaft-position': ['work', 117.602, 139.7, 'transition-base'],
    'shaft-diameter': ['work', 15.875, 28.575, 'new-hub'],
    'shaft-length': ['work', 47.752, 60, 'new-hub'],
    key: ['ok', 4.775, 6.35],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 7.25 });
  expect(found.of('foot-holes')?.says).toMatch(
    /off its bolt by 33.27 mm across and 31.75 mm along, and bolts of 9.5 mm/,
  );
});

test('what a person measured wins over the frame: a 184T turned down to 25.4 mm', () => {
  // Its key was not measured: what the frame tells of it no longer holds. New hub, with its own key.
  const measured = { shaftDiameterMm: 25.4 };
  const found = judged(nema, { motor: { measured } });
  expectMount(found, {
    ...TWIN,
    'shaft-diameter': ['work', 25.4, 28.575, 'new-hub'],
    key: ['ok', null, 6.35],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 3.25 });
});

test('a key of another width in the hub: a stepped key', () => {
  // 8 mm told in the hub, 6.35 on the 184T shaft.
  const found = judged(nema, { set: { coupling: { hub: { boreMm: 28.575, keyWidthMm: 8 } } } });
  expectMount(found, { ...TWIN, key: ['work', 6.35, 8, 'step-key'] });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 2.5 });
});

test('no plate of the failed motor, and everything measured at the set: a straight swap', () => {
  const found = judged(nema, {
    failed: null,
    set: {
      seat: { shaftHeightMm: 114.3, holesAcrossMm: 190.5, holesAlongMm: 139.7, boltMm: 9.5, holeToShaftEndMm: 139.7 },
      coupling: { hub: { boreMm: 28.575, keyWidthMm: 6.35 } },
    },
  });
  expectMount(found, TWIN);
  expect(standing(found)).toEqual([]);
  // The failed motor's frame does not tell over the tape: a seat of 112 under a plate of 184T.
  const over = judged(nema, { set: { seat: { shaftHeightMm: 113, holeToShaftEndMm: 141 } } });
  expectMount(over, { ...TWIN, 'shaft-height': ['work', 114.3, 113, 'shims'], 'shaft-position': ['note', 139.7, 141] });
});

test('no plate and nothing measured: every question of the seat is a reading', () => {
  const found = judged(nema, { failed: null });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['check', 114.3, null, 'reading'],
    'foot-holes': ['check', '190.5 × 139.7', null, 'reading'],
    'shaft-position': ['check', 139.7, null, 'reading'],
    'shaft-diameter': ['check', 28.575, null, 'reading'],
    'shaft-length': ['ok', 69.85, 60],
    key: ['check', 6.35, null, 'reading'],
  });
  expect(found.verdict).toBe('check-first');
});

test('a frame nobody can read tells nothing, what is on the plate beside it still does', () => {
  for (const frame of [null, 'XK-77-Q']) {
    const found = judged(nema, { motor: { frame } });
    expectMount(found, {
      mounting: ['check', null, 'foot', 'reading'],
      'shaft-height': ['check', null, 114.3, 'reading'],
      'foot-holes': ['check', null, '190.5 × 139.7', 'reading'],
      'shaft-position': ['check', null, 139.7, 'reading'],
      'shaft-diameter': ['check', null, 28.575, 'reading'],
      'shaft-length': ['check', null, 60, 'reading'],
      key: ['check', null, 6.35, 'reading'],
    });
    const measured = {
      shaftHeightMm: 114.3,
      holesAcrossMm: 190.5,
      holesAlongMm: 139.7,
      holeMm: 10.4,
      holeToShoulderMm: 69.85,
      shaftDiameterMm: 28.575,
      shaftLengthMm: 69.85,
      keyWidthMm: 6.35,
    };
    const known = judged(nema, { motor: { frame, mounting: 'IM B3', measured } });
    expectMount(known, TWIN);
    expect(standing(known)).toEqual([]);
    // The same of the failed motor: measured, it is as good as a plate. Through its 10.4 mm holes went 3/8 in at most.
    expectMount(judged(nema, { failed: { frame, mounting: 'IM B3', measured } }), TWIN);
    const noHole = judged(nema, { failed: { frame, mounting: 'IM B3', measured: { ...measured, holeMm: null } } });
    expectMount(noHole, {
      ...TWIN,
      'foot-holes': ['check', '190.5 × 139.7', '190.5 × 139.7', 'reading'],
    });
  }
});

test('nothing known of set or motor: every question the mount always has is a reading, no other is asked', () => {
  const nothing = { frame: null, mounting: null, terminalBox: null, massKg: null, lengthMm: null, ratings: [] };
  const found = judged(nema, {
    failed: null,
    motor: nothing,
    set: { shaftDirection: null, coupling: null, base: null, seat: null, supply: null, load: null, surroundings: null },
  });
  expectMount(found, {
    mounting: ['check', null, 'foot', 'reading'],
    'shaft-height': ['check', null, null, 'reading'],
    'foot-holes': ['check', null, null, 'reading'],
    'shaft-position': ['check', null, null, 'reading'],
    'shaft-diameter': ['check', null, null, 'reading'],
    key: ['check', null, null, 'reading'],
  });
  expect(found.verdict).toBe('check-first');
});

test('a 213T for a 184T is too high by 17.55 mm and its holes by 12.7 mm each', () => {
  // 133.35 − 114.3 = 19.05 less 1.5 of shims; (215.9 − 190.5)/2. Ends 174.752 for 139.7: 85.852 − 35.052 carries 50.8.
  const found = judged(nema, { motor: { frame: '213T' }, set: { coupling: { hub: { reboreToMm: 35 } } } });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['block', 133.35, 114.3],
    'foot-holes': ['block', '215.9 × 139.7', '190.5 × 139.7'],
    'shaft-position': ['check', 174.752, 139.7, 'reading'],
    'shaft-diameter': ['work', 34.925, 28.575, 'rebore'],
    'shaft-length': ['ok', 85.852, 60],
    key: ['ok', 7.925, 6.35],
  });
  expect(found).toMatchObject({ verdict: 'unsuitable', hours: 4 });
});

test('a gap of 40 mm takes the 35.052 mm of a 213T down to 4.948, and not to 5', () => {
  // Seat told at the height of a 213T, so that only the place asks.
  const ask = (gapMinMm: number) =>
    judged(nema, {
      motor: { frame: '213T' },
      set: { seat: { shaftHeightMm: 133.35 }, coupling: { gapMm: 40, gapMinMm } },
    }).of('shaft-position');
  expect(ask(4.9)).toMatchObject({ grade: 'note', work: null });
  expect(ask(5)).toMatchObject({ grade: 'block', work: null });
  // Where the base may be drilled the motor is set further from the pump.
  const drilled = judged(nema, {
    motor: { frame: '213T' },
    set: { base: { slotting: true }, coupling: { gapMm: 40, gapMinMm: 5 } },
  });
  expect(drilled.of('shaft-position')).toMatchObject({ grade: 'work', work: { id: 'move-base', hours: 4 } });
});
