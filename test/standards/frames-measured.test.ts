import { describe, expect, test } from 'vitest';
import { type FrameOption, frameOptions } from '@/lib/standards/measured/frame-options';
import { framesMeasured } from '@/lib/standards/measured/frames-measured';
import { figureOf, MEASURABLE, type Measured, readsTo } from '@/lib/standards/measured/misfit';
import { nameOf } from '@/lib/standards/measured/name-of';
import type { FaceSeen, Seen } from '@/lib/standards/measured/seen';
import { facesApart, tellApart } from '@/lib/standards/measured/tell-apart';
import { twinsOf } from '@/lib/standards/measured/twins';
import { iecFootFrames } from '@/lib/standards/tables/iec-foot-frames';
import { nemaFootFrames } from '@/lib/standards/tables/nema-foot-frames';

const names = (found: readonly { option: FrameOption }[]) => found.map(({ option }) => nameOf(option));
const seen = (face: FaceSeen | null, holes: number | null = null): Seen => ({ face, holes });
const IN = 25.4;
/** As a tape shows it: whole millimetres, or sixteenths of an inch. */
const inMm = (mm: number) => Math.round(mm);
const inSixteenths = (mm: number) => (Math.round((mm / IN) * 16) / 16) * IN;

/** Every figure that the standard fixes for a frame, as the tape shows it. */
function readOff(option: FrameOption, read: (mm: number) => number): { measured: Measured; at: Seen } {
  const { face } = option.fit;
  const measured = Object.fromEntries(
    MEASURABLE.flatMap((name) => {
      const figure = figureOf(option, name);
      return figure === null ? [] : [[name, read(figure.values[0])]];
    }),
  );
  const kind = face === null ? 'none' : face.kind === 'D' || face.kind === 'FF' ? 'through' : 'tapped';
  return { measured, at: seen(kind, face?.holes ?? null) };
}

describe('every frame that the tables list is found by its own figures', () => {
  test('each has a name of its own', () => {
    const all = frameOptions().map(nameOf);
    expect(all.length).toBeGreaterThan(300);
    expect(new Set(all).size).toBe(all.length);
  });

  test.each([
    ['whole millimetres', inMm, 'tape'],
    ['sixteenths of an inch', inSixteenths, 'tape'],
    ['as they are printed', (mm: number) => mm, 'caliper'],
  ] as const)('read in %s: first or tied, and what is tied has its figures', (_how, read, tool) => {
    const lost: string[] = [];
    const wrong: string[] = [];
    for (const option of frameOptions()) {
      const { measured, at } = readOff(option, read);
      const { fits } = framesMeasured(measured, at, tool);
      if (!names(fits).includes(nameOf(option))) lost.push(nameOf(option));
      for (const { option: other } of fits)
        for (const name of MEASURABLE) {
          const [a, b] = [figureOf(option, name), figureOf(other, name)];
          if (a === null || b === null) continue;
          const apart = Math.min(...b.values.map((mm) => Math.abs(mm - a.values[0])));
          const most = 2 * readsTo(name, tool) + b.plus + b.minus;
          if (apart > most) wrong.push(`${nameOf(option)} is taken for ${nameOf(other)}: ${name}`);
        }
    }
    expect(lost).toEqual([]);
    expect(wrong).toEqual([]);
  });

  test('each by its feet and shaft alone, whether or not anybody looked for a face', () => {
    const lost: string[] = [];
    for (const option of frameOptions()) {
      const { measured } = readOff(option, inMm);
      const { pitchCircleMm: _p, spigotMm: _s, faceDiameterMm: _f, ...rest } = measured;
      const { fits } = framesMeasured(rest, seen(null), 'tape');
      // One whose feet and shaft are those of the bare frame stands as that.
      const bare = option.fit.face === null ? nameOf(option) : null;
      const isThere = fits.some(({ option: one }) =>
        bare === null
          ? names([{ option: one }])[0] === nameOf(option) || isSameBelow(one, option)
          : nameOf(one) === bare,
      );
      if (!isThere) lost.push(nameOf(option));
    }
    expect(lost).toEqual([]);
  });
});

const isSameBelow = (a: FrameOption, b: FrameOption) =>
  a.fit.face === null &&
  MEASURABLE.slice(0, 7).every((name) => figureOf(a, name)?.values[0] === figureOf(b, name)?.values[0]);

// NEMA MG 1-2016 clause 4.4.1 and IEC 60072-1 Table 1 as their tables here have them, row by row: D, 2E, 2F and U.
test.each(nemaFootFrames.rows.map((row) => [row.frame, row] as const))(
  'NEMA %s: height, holes and shaft leave it among the frames left (MG 1 4.4.1)',
  (frame, { D, E, twoF, U }) => {
    const { fits } = framesMeasured(
      {
        ...{ shaftHeightMm: inMm(D[0] * IN), holesAlongMm: inMm(twoF[0] * IN), shaftDiameterMm: inMm(U[0] * IN) },
        ...(E && { holesAcrossMm: inMm(2 * E[0] * IN) }),
      },
      seen('none'),
      'tape',
    );
    expect(fits.map(({ option }) => option.frame)).toContain(frame);
  },
);

test.each(iecFootFrames.rows.map((row) => [row.frame, row] as const))(
  'IEC %s: height and holes leave it among the frames left (IEC 60072-1 Table 1)',
  (frame, { H, A, B }) => {
    const { fits } = framesMeasured(
      { shaftHeightMm: H[0], holesAcrossMm: A[0], holesAlongMm: B[0] },
      seen('none'),
      'tape',
    );
    expect(fits.map(({ option }) => option.frame)).toContain(frame);
  },
);

/** In inches as printed; a tape shows the nearest sixteenth. */
const printed = (figures: Measured): Measured =>
  Object.fromEntries(Object.entries(figures).map(([name, inches]) => [name, inSixteenths(inches * IN)]));

describe('one frame of each suffix, its printed figures read by a tape, is that frame and no other', () => {
  const at = (
    shaftHeightMm: number,
    holesAcrossMm: number,
    holesAlongMm: number,
    holeToShoulderMm: number,
    shaftDiameterMm: number,
    shaftLengthMm: number,
    keyWidthMm: number,
  ): Measured => ({
    ...{ shaftHeightMm, holesAcrossMm, holesAlongMm, holeToShoulderMm },
    ...{ shaftDiameterMm, shaftLengthMm, keyWidthMm },
  });
  // D, 2E, 2F, BA, U, N-W, S. T: NEMA MG 1-2016 4.4.1; U and without a suffix: superseded editions of it.
  test.each<[string, Measured, Seen, string[]]>([
    ['T', at(4.5, 7.5, 5.5, 2.75, 1.125, 2.75, 0.25), seen('none'), ['184T']],
    ['T, larger', at(5.25, 8.5, 7, 3.5, 1.375, 3.38, 0.312), seen('none'), ['215T']],
    ['TS', at(7, 11, 9.5, 4.75, 1.625, 3.25, 0.375), seen('none'), ['284TS']],
    ['U', at(6.25, 10, 10, 4.25, 1.375, 3.75, 0.312), seen('none'), ['256U']],
    ['no suffix, before 1964', at(4.5, 7.5, 4.5, 2.75, 0.875, 2.25, 0.188), seen('none'), ['182']],
    ['no suffix, before 1952', at(6.25, 10, 8.25, 4.25, 1.125, 3.37, 0.25), seen('none'), ['254']],
  ])('%s', (_suffix, figures, eyes, frames) => {
    expect(names(framesMeasured(printed(figures), eyes, 'tape').fits)).toEqual(frames);
  });

  // AJ, AK, U, AH from the face. C: MG 1-2016 4.4.4; JM: MG 1-2016 table 18-33.
  test.each<[string, Measured, Seen, string[]]>([
    [
      'C',
      { shaftHeightMm: 4.5, pitchCircleMm: 7.25, spigotMm: 8.5, shaftDiameterMm: 1.125 },
      seen('tapped', 4),
      ['182TC', '184TC'],
    ],
    ['CH', { pitchCircleMm: 5.875, spigotMm: 4.5, shaftDiameterMm: 1.125 }, seen('tapped', 4), ['182TCH', '184TCH']],
    [
      'JM',
      { shaftHeightMm: 5.25, holesAlongMm: 5.5, pitchCircleMm: 7.25, spigotMm: 8.5, shaftDiameterMm: 0.875 },
      seen('tapped', 4),
      ['213JM'],
    ],
  ])('%s', (_suffix, figures, eyes, frames) => {
    expect(names(framesMeasured(printed(figures), eyes, 'tape').fits)).toEqual(frames);
  });

  // H, A, B, C, D, E, F: IEC 60072-1 Tables 1 and 4.
  test.each<[string, Measured, string[]]>([
    ['S', at(132, 216, 140, 89, 38, 80, 10), ['132S']],
    ['M', at(132, 216, 178, 89, 38, 80, 10), ['132M']],
    ['L', at(160, 254, 254, 108, 42, 110, 12), ['160L']],
  ])('IEC %s', (_length, figures, frames) => {
    expect(names(framesMeasured(figures, seen('none'), 'tape').fits)).toEqual(frames);
  });
});

test('28 mm is not 1 1/8 in: a tape leaves both families, a caliper one (MG 1 4.4.1: U = 1.125; IEC 60072-1: D = 28)', () => {
  // 112M stands 112 mm high and 182T 114.3 mm: a height of 113 mm could be either.
  const feet = { shaftHeightMm: 113, holesAcrossMm: 190 };
  const tape = framesMeasured({ ...feet, shaftDiameterMm: 28 }, seen('none'), 'tape');
  expect(names(tape.fits)).toEqual(expect.arrayContaining(['112M', '182T', '184T']));
  const twins = twinsOf(tape);
  expect(twins?.differences.find(({ name }) => name === 'shaftDiameterMm')).toMatchObject({
    nemaMm: 28.575,
    iecMm: 28,
  });
  const caliper = framesMeasured(
    { shaftHeightMm: 112.5, holesAcrossMm: 190, shaftDiameterMm: 28 },
    seen('none'),
    'caliper',
  );
  expect(names(caliper.fits)).toContain('112M');
  expect(names(caliper.fits)).not.toContain('182T');
  const near = caliper.near.find(({ option }) => option.frame === '182T');
  expect(near?.misfits.find(({ name }) => name === 'shaftDiameterMm')).toMatchObject({ have: 28, need: 28.575 });
});

test('132 mm stands between 213T and 132S: the holes along tell them apart, and 132S from 132M', () => {
  const { fits } = framesMeasured({ shaftHeightMm: 133, holesAcrossMm: 216 }, seen('none'), 'tape');
  expect(names(fits)).toEqual(expect.arrayContaining(['132S', '132M', '213T', '215T']));
  const next = tellApart(fits, { shaftHeightMm: 133, holesAcrossMm: 216 }, seen('none'), 'tape');
  const along = next.find(({ name }) => name === 'holesAlongMm');
  expect(along?.figures.map(({ mm }) => Math.round(mm))).toEqual([140, 178, 203]);
  const measured: Measured = { shaftHeightMm: 133, holesAcrossMm: 216, holesAlongMm: 178 };
  expect(names(framesMeasured(measured, seen('none'), 'tape').fits)).toContain('132M');
  expect(names(framesMeasured(measured, seen('none'), 'tape').fits)).not.toContain('132S');
});

test('the 1952 series and the older frames part by the shaft: 254U is 1 3/8 in, 254 1 1/8 in, 254T 1 5/8 in', () => {
  const of = (inches: number) =>
    names(
      framesMeasured(
        { shaftHeightMm: 159, holesAcrossMm: 254, holesAlongMm: 210, shaftDiameterMm: inches * IN },
        seen('none'),
        'caliper',
      ).fits,
    );
  expect(of(1.375)).toEqual(['254U']);
  expect(of(1.125)).toEqual(['254']);
  expect(of(1.625)).toEqual(['254T']);
});

test('S after T is a short shaft and leaves the feet as they are; the IEC S is a short foot', () => {
  const feet = { shaftHeightMm: 178, holesAcrossMm: 279, holesAlongMm: 241 };
  expect(names(framesMeasured({ ...feet, shaftLengthMm: 117 }, seen('none'), 'tape').fits)).toContain('284T');
  const short = names(framesMeasured({ ...feet, shaftLengthMm: 82 }, seen('none'), 'tape').fits);
  expect(short).toContain('284TS');
  expect(short).not.toContain('284T');
});

test('a 2-pole motor of one IEC frame can have another shaft (IEC 60072-1 Table 1: 225M, 55 mm and 60 mm)', () => {
  const feet = { shaftHeightMm: 225, holesAcrossMm: 356, holesAlongMm: 311 };
  expect(names(framesMeasured({ ...feet, shaftDiameterMm: 55 }, seen('none'), 'caliper').fits)).toEqual([
    '225M, 2 poles',
  ]);
  expect(names(framesMeasured({ ...feet, shaftDiameterMm: 60 }, seen('none'), 'caliper').fits)).toEqual([
    '225M, 4 poles and more',
  ]);
});

test('a face that was seen rules out what has none, and free holes what has tapped ones', () => {
  const feet = { shaftHeightMm: 112, holesAcrossMm: 190, holesAlongMm: 140, shaftDiameterMm: 28 };
  expect(names(framesMeasured(feet, seen('through'), 'caliper').fits)).toEqual(['112M FF215']);
  expect(names(framesMeasured(feet, seen('tapped'), 'caliper').fits)).toEqual(['112M FT130', '112M FT165']);
  expect(names(framesMeasured({ ...feet, pitchCircleMm: 165 }, seen('tapped'), 'caliper').fits)).toEqual([
    '112M FT165',
  ]);
  const face = framesMeasured({ pitchCircleMm: 184, spigotMm: 216, shaftDiameterMm: 28.6 }, seen('tapped'), 'tape');
  expect(names(face.fits)).toEqual(expect.arrayContaining(['182TC', '184TC']));
});

test('what no table fixes is said and never taken for agreement; what nobody can be is told as nothing', () => {
  const { fits } = framesMeasured(
    { shaftHeightMm: 89, holesAcrossMm: 140, holeToShoulderMm: 57 },
    seen('tapped'),
    'tape',
  );
  const pump = fits.find(({ option }) => option.frame === '143JM');
  expect(pump?.untold).toEqual(['holeToShoulderMm']);
  expect(framesMeasured({ shaftHeightMm: 400.5, shaftDiameterMm: 5 }, seen('none'), 'tape')).toEqual({
    fits: [],
    near: [],
  });
  expect(framesMeasured({}, seen(null), 'tape').fits).toEqual([]);
});

test('a tape reads to a sixteenth of an inch, a caliper tells 28 mm from 1 1/8 in', () => {
  expect(readsTo('shaftHeightMm', 'tape')).toBeCloseTo(IN / 16, 1);
  expect(2 * readsTo('shaftDiameterMm', 'caliper')).toBeLessThan(28.575 - 28);
});

test('213T and 132S stand on the same feet, 1.35 mm apart in height: the shaft tells (MG 1 4.4.1; IEC 60072-1 Table 1)', () => {
  const feet = { shaftHeightMm: 133, holesAcrossMm: 216, holesAlongMm: 140, holeToShoulderMm: 89 };
  const found = framesMeasured(feet, seen('none'), 'tape');
  expect(names(found.fits)).toEqual(expect.arrayContaining(['213T', '132S']));
  const twins = twinsOf(found);
  expect(twins).toMatchObject({ nema: '213T', iec: '132S', left: 'both' });
  expect(Object.fromEntries((twins?.differences ?? []).map((one) => [one.name, +one.difference.toFixed(2)]))).toEqual({
    shaftHeightMm: 1.35, // 5.25 in and 132 mm
    holesAcrossMm: -0.1,
    holesAlongMm: -0.3,
    holeToShoulderMm: -0.1,
    shaftDiameterMm: -3.08, // 1.375 in and 38 mm
    shaftLengthMm: 5.85, // 3.38 in and 80 mm
    keyWidthMm: -2.08, // 0.312 in and 10 mm
  });
  const told = tellApart(found.fits, feet, seen('none'), 'tape').map(({ name }) => name);
  expect(told[0]).toBe('shaftDiameterMm');
  expect(told).not.toContain('holesAcrossMm');
  const metric = framesMeasured({ ...feet, shaftDiameterMm: 38 }, seen('none'), 'tape');
  expect(names(metric.fits)).toEqual(['132S']);
  expect(twinsOf(metric)).toMatchObject({ nema: '213T', iec: '132S', left: 'IEC' });
});

test('what a tape leaves of 28 mm and 1 1/8 in is told to be read again by a caliper', () => {
  const measured = { shaftHeightMm: 113, holesAcrossMm: 190, holesAlongMm: 140, shaftDiameterMm: 28 };
  const { fits } = framesMeasured(measured, seen('none'), 'tape');
  expect(names(fits)).toEqual(expect.arrayContaining(['112M', '184T']));
  expect(tellApart(fits, measured, seen('none'), 'tape').filter(({ isAgain }) => isAgain)).toMatchObject([
    { name: 'shaftHeightMm' },
    { name: 'shaftDiameterMm' },
  ]);
  expect(tellApart(fits, measured, seen('none'), 'caliper').some(({ isAgain }) => isAgain)).toBe(false);
});

test('a frame that agrees because little was measured says what is still to be measured', () => {
  const { fits } = framesMeasured({ shaftHeightMm: 89 }, seen('none'), 'tape');
  expect(names(fits)).toEqual(expect.arrayContaining(['56 (NEMA)', '143T', '145T', '90S', '90L']));
  for (const one of fits) expect(one.unmeasured, nameOf(one.option)).toContain('shaftDiameterMm');
  const all = { holesAcrossMm: 140, holesAlongMm: 102, holeToShoulderMm: 57, shaftDiameterMm: 22.2 };
  const more = framesMeasured(
    { shaftHeightMm: 89, ...all, shaftLengthMm: 57, keyWidthMm: 4.8 },
    seen('none'),
    'caliper',
  );
  expect(more.fits.map(({ option, unmeasured }) => [option.frame, unmeasured])).toEqual([['143T', []]]);
});

test('where nobody looked for a face, feet that stand 3 1/2 in back are those of a C-face motor (MG 1 4.4.4: BA of 184TC)', () => {
  const feet = { shaftHeightMm: 114, holesAcrossMm: 190, holesAlongMm: 140, shaftDiameterMm: 28.6 };
  const back = framesMeasured({ ...feet, holeToShoulderMm: 89 }, seen(null), 'tape');
  expect(names(back.fits)).toContain('184TC');
  expect(names(back.fits)).not.toContain('184T');
  expect(names(framesMeasured({ ...feet, holeToShoulderMm: 70 }, seen(null), 'tape').fits)).toContain('184T');
  expect(names(framesMeasured({ ...feet, holeToShoulderMm: 89 }, seen('none'), 'tape').fits)).toEqual([]);
  const open = framesMeasured(feet, seen(null), 'tape').fits;
  expect(facesApart(open, seen(null))).toMatchObject({
    bare: expect.arrayContaining(['184T']),
    faced: expect.arrayContaining(['184TC']),
  });
  expect(facesApart(open, seen('tapped'))).toBeNull();
  expect(tellApart(open, feet, seen(null), 'tape').map(({ name }) => name)).not.toContain('pitchCircleMm');
});

test('the holes of a face are counted: 11 in round, four on 324TC, eight on 404TC (MG 1 4.4.4)', () => {
  const face = { pitchCircleMm: 11 * IN, spigotMm: 12.5 * IN };
  const of = (holes: number) => names(framesMeasured(face, seen('tapped', holes), 'tape').fits);
  expect(of(4)).toContain('324TC');
  expect(of(4)).not.toContain('404TC');
  expect(of(8)).toContain('404TC');
  expect(of(8)).not.toContain('324TC');
});
