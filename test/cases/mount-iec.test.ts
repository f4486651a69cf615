import { expect, test } from 'vitest';
import { expectMount } from './mount-case';
import { iec, judged, nema, standing } from './whole-case';

// mm of IEC 60072-1 and EN 50347: 112M: H 112, A 190, B 140, K 12 (M10), C 70 + E 60 = 130, D 28, F 8.
// 100L: 100, 160 × 140, 12, 63 + 60 = 123, 28, 8. 132S and M: 132, 216 × 140 and 178, 12, 89 + 80 = 169, 38, 10.
// 90S and L: 90, 140 × 100 and 125, 10 (M8), 56 + 50 = 106, 24, 8. 160M: 160, 254 × 210, 108 + 110 = 218, 42, 12.
// Inches of NEMA MG 1 4.4.1 times 25.4. Base: a 112M for a 112M, hub 60, shims 1.5 of 6.
const HELD = { mounting: ['ok', 'foot', 'foot'] } as const;

test('a 112M for a 184T: 2.3 mm of shims, the hub overhangs 9.7 mm and is a new one', () => {
  // Stack 1.5 + 2.3 = 3.8 of 6. Hole 12, bolt 3/8 in = 9.525: play 1.24; off by 0.25 and 0.15: 0.29.
  // 130 − 139.7 = −9.7; 0.2 × 60 = 12. 28 is not 28.575: no sleeve so thin.
  const found = judged(nema, { motor: { frame: '112M', mounting: 'IM B3' } });
  expectMount(found, {
    ...HELD,
    'shaft-height': ['work', 112, 114.3, 'shims'],
    'foot-holes': ['ok', '190 × 140', '190.5 × 139.7'],
    'shaft-position': ['note', 130, 139.7],
    'shaft-diameter': ['work', 28, 28.575, 'new-hub'],
    'shaft-length': ['ok', 60, 60],
    key: ['ok', 8, 6.35],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 3.75 });
  expect(found.of('shaft-height')).toMatchObject({ difference: -2.3, unit: 'mm', work: { hours: 0.5 } });
});

test('a 184T for a 112M: too high for 1.5 mm of shims, low enough for 3', () => {
  const ask = (shimsPresentMm: number | null) =>
    judged(iec, { motor: { frame: '184T', mounting: null }, set: { base: { shimsPresentMm } } });
  // Hole 0.41 in = 10.41, bolt M10: play 0.21, off by 0.29: less than print (holes to 0.01 in) tells apart.
  // 139.7 − 130 = 9.7 nearer; 69.85 − 9.7 = 60.15 leaves room for 60.
  const rest = {
    ...HELD,
    'foot-holes': ['ok', '190.5 × 139.7', '190 × 140'],
    'shaft-position': ['note', 139.7, 130],
    'shaft-diameter': ['work', 28.575, 28, 'new-hub'],
    'shaft-length': ['ok', 69.85, 60],
    key: ['ok', 6.35, 8],
  } as const;
  expectMount(ask(1.5), { ...rest, 'shaft-height': ['block', 114.3, 112] });
  expect(ask(1.5)).toMatchObject({ verdict: 'unsuitable', hours: 3.25 });
  expectMount(ask(3), { ...rest, 'shaft-height': ['work', 114.3, 112, 'shims'] });
  expect(ask(3)).toMatchObject({ verdict: 'swap-with-work', hours: 3.75 });
  // 2.3 − 2.3 = 0 is not below 0.
  expectMount(ask(2.3), { ...rest, 'shaft-height': ['work', 114.3, 112, 'shims'] });
  expectMount(ask(null), { ...rest, 'shaft-height': ['check', 114.3, 112, 'reading'] });
  expect(ask(null)).toMatchObject({ verdict: 'check-first', hours: 3.25 });
  // A gap of 3 mm is known: the hub slides back, and the shaft end stands 9.7 mm out of it towards the pump's.
  const gap = judged(iec, {
    motor: { frame: '184T', mounting: null },
    set: { base: { shimsPresentMm: 3 }, coupling: { gapMm: 3, gapMinMm: 2, gapMaxMm: 5 } },
  });
  expect(gap.of('shaft-position')).toMatchObject({ grade: 'check', by: 'reading', difference: 9.7 });
});

test('the shim limit: 6.0 mm in all is shims, 6.1 a ground block, and unknown shims count from what is added', () => {
  // 2.3 + 3.7 = 6.0; 2.3 + 3.8 = 6.1
  const ask = (shimsPresentMm: number | null) =>
    judged(nema, { motor: { frame: '112M', mounting: 'IM B3' }, set: { base: { shimsPresentMm } } }).of('shaft-height');
  expect(ask(3.7)).toMatchObject({ grade: 'work', work: { id: 'shims' } });
  expect(ask(3.8)).toMatchObject({ grade: 'work', work: { id: 'ground-block', hours: 2.5 } });
  expect(ask(null)).toMatchObject({ grade: 'work', work: { id: 'shims' } });
});

test('132S and 132M share all but the length of the feet; 132S/M has both', () => {
  const rest = {
    ...HELD,
    'shaft-height': ['ok', 132, 132],
    'shaft-position': ['ok', 169, 169],
    'shaft-diameter': ['ok', 38, 38],
    'shaft-length': ['ok', 80, 60],
    key: ['ok', 10, 10],
  } as const;
  const found = judged(iec, { failed: { frame: '132S' }, motor: { frame: '132M' } });
  expectMount(found, { ...rest, 'foot-holes': ['block', '216 × 178', '216 × 140'] });
  const slotted = judged(iec, {
    failed: { frame: '132S' },
    motor: { frame: '132M' },
    set: { base: { slotting: true } },
  });
  expectMount(slotted, { ...rest, 'foot-holes': ['work', '216 × 178', '216 × 140', 'slot-or-redrill'] });
  const both = judged(iec, { failed: { frame: '132S' }, motor: { frame: '132S/M' } });
  expectMount(both, { ...rest, 'foot-holes': ['ok', '216 × 140 or 178', '216 × 140'] });
  expect(both.verdict).toBe('straight-swap');
  // Only 132 told: which foot length is a reading.
  const open = judged(iec, { failed: { frame: '132S' }, motor: { frame: '132' } });
  expectMount(open, { ...rest, 'foot-holes': ['check', null, '216 × 140', 'reading'] });
});

test('a 215T for a 132M: the holes are the same to 0.2 mm', () => {
  // 215T: D 5.25 = 133.35; 2E 8.5 = 215.9; 2F 7 = 177.8; BA 3.5 + N-W 3.38 = 174.752; U 1.375 = 34.925; S 0.312 = 7.925.
  // 1.35 higher of 1.5 shims: 0.15 left. 5.752 nearer: 85.852 − 5.752 = 80.1. Thinner: the hub's bushing.
  const motor = { frame: '215T', mounting: null };
  const found = judged(iec, { failed: { frame: '132M' }, motor, set: { coupling: { hub: { bushed: true } } } });
  const rest = {
    ...HELD,
    'shaft-height': ['work', 133.35, 132, 'shims'],
    'foot-holes': ['ok', '215.9 × 177.8', '216 × 178'],
    'shaft-position': ['note', 174.752, 169],
    'shaft-length': ['ok', 85.852, 60],
    key: ['ok', 7.925, 10],
  } as const;
  expectMount(found, { ...rest, 'shaft-diameter': ['work', 34.925, 38, 'bushing'] });
  expect(found.hours).toBe(3.25);
  // Not bushed: a sleeve would keep 1.54 − 7.925/2, less than nothing. New hub; not replaceable: block.
  const hub = (replaceable: boolean | null) =>
    judged(iec, { failed: { frame: '132M' }, motor, set: { coupling: { hub: { sleeve: true, replaceable } } } });
  expectMount(hub(true), { ...rest, 'shaft-diameter': ['work', 34.925, 38, 'new-hub'] });
  expectMount(hub(null), { ...rest, 'shaft-diameter': ['work', 34.925, 38, 'new-hub'] });
  expect(hub(false).of('shaft-diameter')).toMatchObject({ grade: 'block', have: 34.925, need: 38, work: null });
});

test('a 213T for a 132M: feet 38 mm shorter', () => {
  const found = judged(iec, { failed: { frame: '132M' }, motor: { frame: '213T', mounting: null } });
  expect(found.of('foot-holes')).toMatchObject({ grade: 'block', have: '215.9 × 139.7', need: '216 × 178' });
});

test('a 145T for a 90L: 1 mm off each hole along, more than its play of 0.3', () => {
  // 145T: 88.9; 139.7 × 127; hole 0.34 = 8.636 on M8; BA 2.25 + N-W 2.25 = 114.3; U 22.225; S 0.188 = 4.775.
  // Stack 1.5 + 1.1. 8.3 nearer: 57.15 − 8.3 = 48.85 carries a hub of 45.
  const found = judged(iec, {
    failed: { frame: '90L' },
    motor: { frame: '145T', mounting: null },
    set: { coupling: { hub: { lengthMm: 45 } }, base: { slotting: true } },
  });
  expectMount(found, {
    ...HELD,
    'shaft-height': ['work', 88.9, 90, 'shims'],
    'foot-holes': ['work', '139.7 × 127', '140 × 125', 'slot-or-redrill'],
    'shaft-position': ['note', 114.3, 106],
    'shaft-diameter': ['work', 22.225, 24, 'new-hub'],
    'shaft-length': ['ok', 57.15, 45],
    key: ['ok', 4.775, 8],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 6.25 });
});

test('a 100L for a 182T: a transition base answers height, holes and place at once', () => {
  // 182T: 114.3; 190.5 × 114.3; ends 139.7. Height under the feet 14.3 + 1.5 = 15.8; 16.7 further, over 12.
  const motor = { frame: '100L', mounting: 'IM B3' };
  const found = judged(nema, { failed: { frame: '182T' }, motor, set: { base: { transitionBase: true } } });
  const rest = {
    ...HELD,
    'shaft-diameter': ['work', 28, 28.575, 'new-hub'],
    'shaft-length': ['ok', 60, 60],
    key: ['ok', 8, 6.35],
  } as const;
  expectMount(found, {
    ...rest,
    'shaft-height': ['work', 100, 114.3, 'transition-base'],
    'foot-holes': ['work', '160 × 140', '190.5 × 114.3', 'transition-base'],
    'shaft-position': ['work', 123, 139.7, 'transition-base'],
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 7.25 });
  // Without one: ground blocks, a spacer, and nothing for the holes.
  const bare = judged(nema, { failed: { frame: '182T' }, motor });
  expectMount(bare, {
    ...rest,
    'shaft-height': ['work', 100, 114.3, 'ground-block'],
    'foot-holes': ['block', '160 × 140', '190.5 × 114.3'],
    'shaft-position': ['work', 123, 139.7, 'spacer-coupling'],
  });
  expect(bare.verdict).toBe('unsuitable');
});

test('a 182T for a 100L: 14.3 mm too high whatever lies there', () => {
  const found = judged(iec, { failed: { frame: '100L' }, motor: { frame: '182T', mounting: null } });
  expect(found.of('shaft-height')).toMatchObject({ grade: 'block', have: 114.3, need: 100, difference: 14.3 });
  expect(found.of('foot-holes')).toMatchObject({ grade: 'block' });
});

test('a sleeve needs 3 mm at the keyway', () => {
  // Half of bore less shaft, less half of the key: (42 − 24)/2 − 4 = 5; (42 − 28)/2 − 4 = 3; (38 − 28)/2 − 4 = 1.
  const fitted = (failed: string, frame: string) =>
    judged(iec, {
      failed: { frame: failed },
      motor: { frame },
      set: { coupling: { hub: { sleeve: true, lengthMm: 50 } } },
    }).of('shaft-diameter');
  expect(fitted('160M', '90L')).toMatchObject({
    grade: 'work',
    work: { id: 'sleeve' },
    have: 24,
    need: 42,
    difference: -18,
  });
  expect(fitted('160M', '100L')).toMatchObject({ grade: 'work', work: { id: 'sleeve' }, difference: -14 });
  expect(fitted('132M', '100L')).toMatchObject({ grade: 'work', work: { id: 'new-hub' }, difference: -10 });
});

test('225M: the 2-pole shaft is 55 × 110, the 4-pole one 60 × 140, and without poles nobody knows', () => {
  // 225M: H 225, 356 × 311, C 149; ends 289 and 259. −30 further with a hub of 100: overhang 20, spacer.
  const set = { coupling: { hub: { lengthMm: 100 } } };
  const rest = {
    ...HELD,
    'shaft-height': ['ok', 225, 225],
    'foot-holes': ['ok', '356 × 311', '356 × 311'],
  } as const;
  const two = judged(iec, { both: { frame: '225M' }, motor: { poles: 2 }, set });
  expectMount(two, {
    ...rest,
    'shaft-position': ['work', 259, 289, 'spacer-coupling'],
    'shaft-diameter': ['work', 55, 60, 'new-hub'],
    'shaft-length': ['ok', 110, 100],
    key: ['ok', 16, 18],
  });
  const untold = judged(iec, { both: { frame: '225M' }, motor: { poles: null }, set });
  expectMount(untold, {
    ...rest,
    'shaft-position': ['check', null, 289, 'reading'],
    'shaft-diameter': ['check', null, 60, 'reading'],
    'shaft-length': ['check', null, 100, 'reading'],
    key: ['check', null, 18, 'reading'],
  });
  // 280: 65 × 140 and 75 × 140: the length is known without poles.
  const larger = judged(iec, { both: { frame: '280S' }, motor: { poles: null }, set });
  expect(larger.of('shaft-length')).toMatchObject({ grade: 'ok', have: 140 });
  expect(larger.of('shaft-position')).toMatchObject({ grade: 'ok', have: 330, need: 330 });
  expect(larger.of('shaft-diameter')).toMatchObject({ grade: 'check', have: null, need: 75 });
});

test('a belt: 2.3 mm is within the take-up, the sheave moves along the shaft and is bored anew', () => {
  const set = (takeUpMm: number | null) => ({
    coupling: { type: 'belt', takeUpMm, sheave: { pitchDiameterMm: 200, changeable: true } },
  });
  const low = judged(nema, { motor: { frame: '112M', mounting: 'IM B3' }, set: set(5) });
  expectMount(low, {
    ...HELD,
    'shaft-height': ['note', 112, 114.3],
    'foot-holes': ['ok', '190 × 140', '190.5 × 139.7'],
    'shaft-position': ['note', 130, 139.7],
    'shaft-diameter': ['work', 28, 28.575, 'sheave'],
    'shaft-length': ['ok', 60, 60],
    key: ['ok', 8, 6.35],
  });
  // Higher by 2.3 over 1.5 mm of shims: only the take-up can cover it.
  const high = (takeUpMm: number | null) =>
    judged(iec, { motor: { frame: '184T', mounting: null }, set: set(takeUpMm) }).of('shaft-height');
  expect(high(5)).toMatchObject({ grade: 'note', difference: 2.3 });
  expect(high(2)).toMatchObject({ grade: 'check', by: 'person', difference: 2.3 });
  expect(high(null)).toMatchObject({ grade: 'check', by: 'reading', difference: 2.3 });
});

test('the terminal box against the cable entry', () => {
  const seen = (terminalBox: string | null, cableEntry: string, mounting = 'IM B3') =>
    judged(iec, { motor: { terminalBox, mounting }, set: { base: { cableEntry } } }).of('terminal-box');
  expect(seen('right', 'right')).toMatchObject({ grade: 'ok', have: 'right', need: 'right', difference: null });
  expect(seen('left', 'right')).toMatchObject({ grade: 'work', work: { id: 'terminal-box', hours: 1.5 } });
  expect(seen('top', 'left')).toMatchObject({ grade: 'work' });
  expect(seen(null, 'left')).toMatchObject({ grade: 'check', by: 'reading', have: null, need: 'left' });
  // F-1 left, F-2 right, F-3 top
  for (const [assembly, side] of [
    ['F-1', 'left'],
    ['F-2', 'right'],
    ['F-3', 'top'],
  ] as const) {
    const found = judged(nema, {
      motor: { terminalBox: null, mounting: assembly },
      set: { base: { cableEntry: side } },
    });
    expect(found.of('terminal-box')).toMatchObject({ grade: 'ok', have: side, need: side });
    expect(found.verdict).toBe('straight-swap');
  }
  expect(judged(iec).of('terminal-box')).toBeNull();
});

test('room and lifting: asked where a limit is stated, equal is within it, unknown is a reading', () => {
  const found = judged(iec, { set: { base: { maxLengthMm: 380, maxMassKg: 40 } } });
  expect(found.of('envelope')).toMatchObject({ grade: 'block', have: 390, need: 380, difference: 10, unit: 'mm' });
  expect(found.of('lift')).toMatchObject({ grade: 'block', have: 41, need: 40, difference: 1, unit: 'kg' });
  const equal = judged(iec, { set: { base: { maxLengthMm: 390, maxMassKg: 41 } } });
  expect(standing(equal)).toEqual([]);
  const unknown = judged(iec, {
    motor: { lengthMm: null, massKg: null },
    set: { base: { maxLengthMm: 380, maxMassKg: 40 } },
  });
  expect(unknown.of('envelope')).toMatchObject({ grade: 'check', have: null, by: 'reading', difference: null });
  expect(unknown.of('lift')).toMatchObject({ grade: 'check', have: null, by: 'reading', unit: 'kg' });
  expect(judged(iec, { motor: { lengthMm: null, massKg: null } }).verdict).toBe('straight-swap');
});

test('a smaller and a larger gap: further takes what overhangs and what the gap may open', () => {
  // 100L for 112M: 123 against 130, −7. Hub 30: 6 may overhang; a gap of 3 may open to 5: 6 + 2 = 8. H 100 for 112: 12 + 1.5.
  const found = judged(iec, {
    motor: { frame: '100L' },
    set: { coupling: { hub: { lengthMm: 30 }, gapMm: 3, gapMinMm: 2, gapMaxMm: 5 } },
  });
  expect(found.of('shaft-position')).toMatchObject({ grade: 'note', difference: -7 });
  const fixed = judged(iec, {
    motor: { frame: '100L' },
    set: { coupling: { hub: { lengthMm: 30, replaceable: false } } },
  });
  expect(fixed.of('shaft-position')).toMatchObject({ grade: 'check', by: 'person', difference: -7 });
});
