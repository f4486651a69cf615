import { expect, test } from 'vitest';
import { expectMount } from './mount-case';
import { iec, judged } from './whole-case';

// How a motor is held: by its feet, its face or both (IEC 60034-7), faces of IEC 60072-1 and EN 50347, C faces of NEMA MG 1 4.4.4.
// A gear of ratio 1 and 95 % with a quill: 3 kW / 0.95 = 3.16 of 3.73 kW; nothing but the mount stands in the way.
const gear = (depthMm: number | null, bushing: boolean | null = null) => ({
  mounting: 'face',
  coupling: { type: 'gear', efficiencyPct: 95, hub: null, quill: { depthMm, bushing } },
});
const FACE = { mounting: ['ok', 'face', 'face'] } as const;

test('B35, B14 and B3 where only a B5 is held by its face', () => {
  const ask = (mounting: string | null, failed = 'IM B5') =>
    judged(iec, { failed: { mounting: failed }, motor: { mounting }, set: gear(70) });
  const rest = { 'shaft-diameter': ['ok', 28, 28], 'shaft-length': ['ok', 60, 70], key: ['ok', 8, 8] } as const;
  expectMount(ask('IM B35'), {
    ...rest,
    mounting: ['check', 'foot-and-face', 'face', 'reading'],
    face: ['ok', 'FF215', 'FF215'],
  });
  expectMount(ask('IM B35', 'IM B35'), {
    ...rest,
    mounting: ['note', 'foot-and-face', 'face'],
    face: ['ok', 'FF215', 'FF215'],
  });
  expectMount(ask('IM B14'), { ...rest, ...FACE, face: ['block', 'FT130', 'FF215'] });
  expect(ask('IM B3').of('mounting')).toMatchObject({ grade: 'block', have: 'foot', need: 'face' });
  expect(ask('IM B3').of('face')).toMatchObject({ grade: 'block', have: null, need: 'FF215' });
  expect(ask('IM B3').of('shaft-height')).toBeNull();
  expect(ask(null).of('mounting')).toMatchObject({ grade: 'check', by: 'reading' });
  expect(ask(null).of('face')).toMatchObject({ grade: 'check', by: 'reading', have: null, need: 'FF215' });
});

test('a B35 where feet alone are used: the flange of 250 reaches 13 mm below a height of 112', () => {
  // P/2 = 125. FT130: P 160, 80 stays above.
  const ask = (mounting: string, frame = '112M') =>
    judged(iec, { failed: { frame }, motor: { mounting, frame } }).of('mounting');
  expect(ask('IM B35')).toMatchObject({ grade: 'check', have: 'foot-and-face', need: 'foot', by: 'reading' });
  expect(ask('IM B35')?.says).toContain('13 mm');
  expect(ask('IM B34')).toMatchObject({ grade: 'ok' });
  // 90: 100 − 90 = 10; 132: FF265, P 300: 18.
  expect(ask('IM B35', '90L')?.says).toContain('10 mm');
  expect(ask('IM B35', '132S')?.says).toContain('18 mm');
});

test('a B5 where feet are needed has no holes to measure: it is blocked, with no reading to take', () => {
  const found = judged(iec, { motor: { mounting: 'IM B5' } });
  expect(found.of('mounting')).toMatchObject({ grade: 'block', have: 'face', need: 'foot' });
  expect(found.of('foot-holes')).toMatchObject({ grade: 'block', have: null, need: '190 × 140', reading: null });
  expect(found.of('shaft-position')?.reading ?? null).toBeNull();
  expect(found.verdict).toBe('unsuitable');
});

test('vertical places take a motor made for them', () => {
  const ask = (shaftDirection: string | null, failed: string, mounting: string, held = 'face') =>
    judged(iec, {
      failed: { mounting: failed },
      motor: { mounting },
      set: held === 'face' ? { ...gear(70), shaftDirection } : { shaftDirection },
    }).of('mounting');
  expect(ask('down', 'IM V1', 'IM V1')).toMatchObject({ grade: 'ok', have: 'face', need: 'face' });
  expect(ask('down', 'IM V1', 'IM B5/V1')).toMatchObject({ grade: 'ok' });
  expect(ask('down', 'IM V1', 'IM B5')).toMatchObject({ grade: 'check', by: 'person', reading: null });
  expect(ask('up', 'IM V3', 'IM V1')).toMatchObject({ grade: 'check', by: 'person' });
  expect(ask('horizontal', 'IM B5', 'IM V1')).toMatchObject({ grade: 'check', by: 'person' });
  expect(ask(null, 'IM V1', 'IM B5')).toMatchObject({ grade: 'check', by: 'person' });
  expect(ask('down', 'IM V5', 'IM B3', 'foot')).toMatchObject({ grade: 'check', by: 'person' });
  expect(ask('down', 'IM V5', 'IM V5', 'foot')).toMatchObject({ grade: 'ok' });
  // Feet on a wall: B6 turned from B3.
  expect(ask('horizontal', 'IM B6', 'IM B3', 'foot')).toMatchObject({ grade: 'check', by: 'person' });
});

test('held by feet and face: overhang no matter, both are judged', () => {
  // B35 on feet and face of a gear with a hub of 50; 132M for 112M: height −20, FF265 for FF215.
  const set = { mounting: 'foot-and-face', coupling: { hub: { lengthMm: 50 } } };
  const twin = judged(iec, { both: { mounting: 'IM B35' }, set });
  expectMount(twin, {
    mounting: ['ok', 'foot-and-face', 'foot-and-face'],
    'shaft-height': ['ok', 112, 112],
    'foot-holes': ['ok', '190 × 140', '190 × 140'],
    'shaft-position': ['ok', 130, 130],
    'shaft-diameter': ['ok', 28, 28],
    'shaft-length': ['ok', 60, 60],
    key: ['ok', 8, 8],
    face: ['ok', 'FF215', 'FF215'],
  });
  expect(twin.verdict).toBe('straight-swap');
  const b3 = judged(iec, { failed: { mounting: 'IM B35' }, motor: { mounting: 'IM B3' }, set });
  expect(b3.of('mounting')).toMatchObject({ grade: 'block', have: 'foot', need: 'foot-and-face' });
  expect(b3.of('face')).toMatchObject({ grade: 'block', have: null, need: 'FF215' });
});

test('a quill of unknown depth: a longer shaft is a reading, a shorter one goes less deep', () => {
  // 80: 19 × 40; 90: 24 × 50; a bore told, so only the length asks.
  const ask = (failed: string, frame: string) =>
    judged(iec, { both: { mounting: 'IM B5' }, failed: { frame: failed }, motor: { frame }, set: gear(null, true) });
  expect(ask('80', '90L').of('shaft-length')).toMatchObject({
    grade: 'check',
    by: 'reading',
    have: 50,
    need: 40,
    difference: 10,
  });
  expect(ask('90L', '80').of('shaft-length')).toMatchObject({ grade: 'note', have: 40, need: 50, difference: -10 });
});

test('a face-only motor is turned on its bolts to bring the box round', () => {
  const found = judged(iec, {
    both: { mounting: 'IM B5' },
    motor: { terminalBox: 'left' },
    set: { ...gear(70), base: { cableEntry: 'top' } },
  });
  expect(found.of('terminal-box')).toMatchObject({ grade: 'note', have: 'left', need: 'top', work: null });
  expect(found.verdict).toBe('straight-swap');
});

test('a candidate known only by what was measured of its face still says what it has', () => {
  const measured = {
    pitchCircleMm: 165,
    spigotMm: 130,
    faceDiameterMm: 200,
    shaftDiameterMm: 24,
    shaftLengthMm: 50,
    keyWidthMm: 8,
  };
  const found = judged(iec, {
    failed: { frame: '90L', mounting: 'IM B5' },
    motor: { frame: null, mounting: 'IM B5', measured },
    set: gear(55),
  });
  expect(found.of('mounting')).toMatchObject({ grade: 'ok', have: 'face' });
  expect(found.of('face')).toMatchObject({ grade: 'ok', have: 'FF165', need: 'FF165' });
  expect(found.of('shaft-diameter')).toMatchObject({ grade: 'ok', have: 24, need: 24 });
});

test('a measured bolt circle that is not the frame’s makes it the flange of that circle', () => {
  // 112M B14 has FT130 (M8). Measured 165, 130, 200: FT165 (M10), where an FT165 was told at the set.
  const measured = { pitchCircleMm: 165, spigotMm: 130, faceDiameterMm: 200 };
  const ask = (face: string) =>
    judged(iec, { both: { mounting: 'IM B14' }, motor: { measured }, set: { ...gear(70), seat: { face } } }).of('face');
  expect(ask('FT165')).toMatchObject({ grade: 'ok', have: 'FT165', need: 'FT165' });
  expect(ask('FT130')).toMatchObject({ grade: 'block', have: 'FT165', need: 'FT130' });
  expect(ask('FF165')).toMatchObject({ grade: 'block', have: 'FT165', need: 'FF165' });
  // Only the circle measured, and no such flange: spigot and holes are a reading.
  const odd = judged(iec, { both: { mounting: 'IM B14' }, motor: { measured: { pitchCircleMm: 150 } }, set: gear(70) });
  expect(odd.of('face')).toMatchObject({ grade: 'block', need: 'FT130' });
});
