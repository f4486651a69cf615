import { expect, test } from 'vitest';
import { expectMount, TWIN } from './mount-case';
import { judged, nema, standing } from './whole-case';

// Inches of NEMA MG 1-2016 4.4.1 and 4.4.4, times 25.4. The base case is a 184T for a 184T (figures in mount-case.ts).

test('a 184T for a 184T: nothing to do', () => {
  const found = judged(nema);
  expectMount(found, TWIN);
  expect(found).toMatchObject({ verdict: 'straight-swap', hours: 2 });
});

test('a 184T for a 182T: the same but for the second pair of holes, 25.4 mm further along', () => {
  // Each hole 12.7 mm off along; play (0.41 − 3/8)/2 in = 0.44 mm.
  const holes = ['190.5 × 139.7', '190.5 × 114.3'] as const;
  const found = judged(nema, { failed: { frame: '182T' } });
  expectMount(found, { ...TWIN, 'foot-holes': ['block', ...holes] });
  expect(found).toMatchObject({ verdict: 'unsuitable', hours: 2 });
  expect(found.of('foot-holes')?.says).toContain('second set of holes');
  const slotted = judged(nema, { failed: { frame: '182T' }, set: { base: { slotting: true } } });
  expectMount(slotted, { ...TWIN, 'foot-holes': ['work', ...holes, 'slot-or-redrill'] });
  expect(slotted).toMatchObject({ verdict: 'swap-with-work', hours: 4.5 });
  // Transition allowed, but 1.5 mm under the feet is no height for a plate.
  const low = judged(nema, { failed: { frame: '182T' }, set: { base: { transitionBase: true } } });
  expect(low.of('foot-holes')).toMatchObject({ grade: 'block' });
});

test('a 182/4T has both patterns: it goes where a 182T was and where a 184T was', () => {
  for (const frame of ['182T', '184T']) {
    const found = judged(nema, { failed: { frame }, motor: { frame: '182/4T' } });
    expectMount(found, {
      ...TWIN,
      'foot-holes': ['ok', '190.5 × 114.3 or 139.7', frame === '182T' ? '190.5 × 114.3' : '190.5 × 139.7'],
    });
    expect(found.verdict).toBe('straight-swap');
  }
});

test('a 182/4T failed and a 184T comes: which of its holes the base uses has to be seen', () => {
  const found = judged(nema, { failed: { frame: '182/4T' } });
  expectMount(found, { ...TWIN, 'foot-holes': ['check', '190.5 × 139.7', '190.5 × 114.3 or 139.7', 'reading'] });
  expect(found.verdict).toBe('check-first');
});

test('a 213T for a 215T and the other way round', () => {
  // 210 series: D 5.25 = 133.35; 2E 8.5 = 215.9; 2F 5.5 = 139.7, 7 = 177.8; BA 3.5 + N-W 3.38 = 6.88 = 174.752
  const found = judged(nema, { failed: { frame: '215T' }, motor: { frame: '213T' } });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['ok', 133.35, 133.35],
    'foot-holes': ['block', '215.9 × 139.7', '215.9 × 177.8'],
    'shaft-position': ['ok', 174.752, 174.752],
    'shaft-diameter': ['ok', 34.925, 34.925],
    'shaft-length': ['ok', 85.852, 60],
    key: ['ok', 7.925, 7.925],
  });
  const both = judged(nema, { failed: { frame: '215T' }, motor: { frame: '213/5T' } });
  expect(both.verdict).toBe('straight-swap');
});

test('a 256T for a 256U: same feet, a thicker shaft that ends 6.35 mm nearer', () => {
  // Both: D 6.25, 2E 10, 2F 10, BA 4.25. U frame: shaft 1.375 × 3.75, key 0.312; T: 1.625 × 4.0, key 0.375.
  // Ends 203.2 and 209.55; 101.6 − 6.35 = 95.25 leaves room for a hub of 60. Bore: +6.35, no rebore told: new hub.
  const found = judged(nema, { failed: { frame: '256U' }, motor: { frame: '256T' } });
  const same = {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['ok', 158.75, 158.75],
    'foot-holes': ['ok', '254 × 254', '254 × 254'],
    'shaft-position': ['note', 209.55, 203.2],
    'shaft-length': ['ok', 101.6, 60],
    key: ['ok', 9.525, 7.925],
  } as const;
  expectMount(found, { ...same, 'shaft-diameter': ['work', 41.275, 34.925, 'new-hub'] });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 3.25 });
  // Rebore limits: 41.275 is within 42 and not within 41.
  const rebored = (reboreToMm: number, replaceable: boolean) =>
    judged(nema, {
      failed: { frame: '256U' },
      motor: { frame: '256T' },
      set: { coupling: { hub: { reboreToMm, replaceable } } },
    });
  expectMount(rebored(42, true), { ...same, 'shaft-diameter': ['work', 41.275, 34.925, 'rebore'] });
  expect(rebored(42, true).hours).toBe(4);
  expectMount(rebored(41, true), { ...same, 'shaft-diameter': ['work', 41.275, 34.925, 'new-hub'] });
  expect(rebored(41, false).of('shaft-diameter')).toMatchObject({ grade: 'block', difference: 6.35, work: null });
  expect(rebored(41, false).verdict).toBe('unsuitable');
});

test('a 254T for a 256U: the feet are 44.45 mm shorter', () => {
  // 2F 8.25 = 209.55 against 10 = 254
  const found = judged(nema, { failed: { frame: '256U' }, motor: { frame: '254T' } });
  expect(found.of('foot-holes')).toMatchObject({ grade: 'block', have: '254 × 209.55', need: '254 × 254' });
});

test('a 143T for a 56: same height, nothing else', () => {
  // 56: D 3.5 = 88.9; 2E 4.88 = 123.952; 2F 3 = 76.2; BA 2.75 + N-W 1.88 = 4.63 = 117.602; U 0.625 = 15.875; S 0.188.
  // 143T: 2E 5.5 = 139.7; 2F 4 = 101.6; BA 2.25 + N-W 2.25 = 4.5 = 114.3; U 0.875 = 22.225; S 0.188 = 4.775.
  // 3.302 further: a hub of 45 may overhang 9. The hub is bushed: a new bushing for the thicker shaft.
  const found = judged(nema, {
    failed: { frame: '56', codeLetter: 'J' },
    motor: { frame: '143T' },
    set: { coupling: { hub: { lengthMm: 45, bushed: true } }, base: { slotting: true } },
  });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['ok', 88.9, 88.9],
    'foot-holes': ['work', '139.7 × 101.6', '123.95 × 76.2', 'slot-or-redrill'],
    'shaft-position': ['note', 114.3, 117.602],
    'shaft-diameter': ['work', 22.225, 15.875, 'bushing'],
    'shaft-length': ['ok', 57.15, 45],
    key: ['ok', 4.775, 4.775],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 5.25 });
});

test('a 56 for a 56H: the base may use the 5 in or the 3 in holes', () => {
  // 56H: 2F 5 and 3 in (127 and 76.2); 56: 3 in only. The other way round is ok.
  const long = judged(nema, {
    failed: { frame: '56H' },
    motor: { frame: '56' },
    set: { coupling: { hub: { lengthMm: 45 } } },
  });
  expect(long.of('foot-holes')).toMatchObject({ grade: 'check', by: 'reading' });
  const short = judged(nema, {
    failed: { frame: '56' },
    motor: { frame: '56H' },
    set: { coupling: { hub: { lengthMm: 45 } } },
  });
  expect(short.of('foot-holes')).toMatchObject({ grade: 'ok' });
  expect(short.verdict).toBe('straight-swap');
});

test('a C-face 184TC with feet for a 184T: its own BA of 3.5 in puts the shaft 19.05 mm nearer', () => {
  // BA 3.5 + N-W 2.75 = 6.25 in = 158.75. Face BD 9 in: radius 114.3 on a height of 114.3: clear.
  const motor = { frame: '184TC', mounting: 'IM B35' };
  const seen = (coupling: { [key: string]: number | null | { lengthMm: number } }) =>
    judged(nema, { motor, set: { coupling } });
  const twin = { ...TWIN, mounting: ['ok', 'foot-and-face', 'foot'] } as const;
  // 69.85 − 19.05 = 50.8: no room for 60, and the gap is unknown.
  expectMount(seen({}), { ...twin, 'shaft-position': ['check', 158.75, 139.7, 'reading'] });
  expect(seen({}).verdict).toBe('check-first');
  // Room for a hub of 50.
  expectMount(seen({ hub: { lengthMm: 50 } }), {
    ...twin,
    'shaft-position': ['note', 158.75, 139.7],
    'shaft-length': ['ok', 69.85, 50],
  });
  // A gap of 25 closes to 5.95: more than 5, less than 6.
  expectMount(seen({ gapMm: 25, gapMinMm: 5 }), { ...twin, 'shaft-position': ['note', 158.75, 139.7] });
  expectMount(seen({ gapMm: 25, gapMinMm: 6 }), { ...twin, 'shaft-position': ['block', 158.75, 139.7] });
  const untold = judged(nema, { motor: { frame: '184TC' } });
  expect(untold.of('mounting')).toMatchObject({ grade: 'check', by: 'reading', need: 'foot' });
});

test('a 182TC with feet for a 184TC with feet: only the foot length differs', () => {
  const found = judged(nema, {
    failed: { frame: '184TC', mounting: 'foot' },
    motor: { frame: '182TC', mounting: 'foot' },
  });
  expect(standing(found)).toEqual(['foot-holes block']);
  expect(found.of('shaft-position')).toMatchObject({ grade: 'ok', have: 158.75, need: 158.75 });
});

test('a D flange with feet reaches an inch below them', () => {
  // 184TD: BD 11 in, radius 139.7, height 114.3: 25.4 mm below.
  const found = judged(nema, { motor: { frame: '184TD', mounting: 'foot' } });
  expect(found.of('mounting')).toMatchObject({ grade: 'check', have: 'foot-and-face', need: 'foot', by: 'reading' });
  expect(found.of('mounting')?.says).toContain('25.4 mm');
});

test('a 284TS for a 284T: a thinner, shorter shaft that ends 34.8 mm further', () => {
  // 284T: BA 4.75 + N-W 4.62 = 9.37 = 237.998; U 1.875 = 47.625; S 0.5. TS: 4.75 + 3.25 = 8 = 203.2; 1.625 = 41.275; 0.375.
  // Hub 60 may overhang 12; 34.798 asks for a spacer. Sleeve wall 3.175 − 9.525/2 is below zero: new hub.
  const found = judged(nema, {
    failed: { frame: '284T' },
    motor: { frame: '284TS' },
    set: { coupling: { hub: { sleeve: true } } },
  });
  expectMount(found, {
    mounting: ['ok', 'foot', 'foot'],
    'shaft-height': ['ok', 177.8, 177.8],
    'foot-holes': ['ok', '279.4 × 241.3', '279.4 × 241.3'],
    'shaft-position': ['work', 203.2, 237.998, 'spacer-coupling'],
    'shaft-diameter': ['work', 41.275, 47.625, 'new-hub'],
    'shaft-length': ['ok', 82.55, 60],
    key: ['ok', 9.525, 12.7],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 4.75 });
});

test('a 284TS does not go on a belt', () => {
  const found = judged(nema, {
    failed: { frame: '284T' },
    motor: { frame: '284TS' },
    set: { coupling: { type: 'belt', sheave: { pitchDiameterMm: 250, changeable: true } } },
  });
  expect(found.of('shaft-length')).toMatchObject({ grade: 'block' });
  expect(found.verdict).toBe('unsuitable');
});
