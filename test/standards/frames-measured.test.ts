import { describe, expect, test } from 'vitest';
import { frameOptions } from '@/lib/standards/measured/frame-options';
import { framesMeasured } from '@/lib/standards/measured/frames-measured';
import { figureOf, MEASURABLE, type Measured, readsTo } from '@/lib/standards/measured/misfit';
import { nameOf, tellApart, twinsOf } from '@/lib/standards/measured/tell-apart';
import { iecFootFrames } from '@/lib/standards/tables/iec-foot-frames';
import { nemaFootFrames } from '@/lib/standards/tables/nema-foot-frames';

const names = (found: readonly { option: { frame: string; poles: 2 | 4 | null } }[]) =>
  found.map(({ option }) => nameOf(option));
const IN = 25.4;
/** As a tape shows it: whole millimetres, or sixteenths of an inch. */
const inMm = (mm: number) => Math.round(mm);
const inSixteenths = (mm: number) => (Math.round((mm / IN) * 16) / 16) * IN;

describe('every frame that the tables list is found by its own figures', () => {
  test.each([
    ['whole millimetres', inMm],
    ['sixteenths of an inch', inSixteenths],
  ])('read by a tape in %s', (_how, read) => {
    const lost: string[] = [];
    for (const option of frameOptions()) {
      const { face } = option.fit;
      const seen = face === null ? 'none' : face.kind === 'D' || face.kind === 'FF' ? 'through' : 'tapped';
      const measured: Partial<Record<(typeof MEASURABLE)[number], number>> = {};
      for (const name of MEASURABLE) {
        const figure = figureOf(option, name);
        if (figure !== null) measured[name] = read(figure.values[0]);
      }
      const { fits } = framesMeasured(measured, seen, 'tape');
      if (!names(fits).includes(nameOf(option))) lost.push(nameOf(option));
    }
    expect(frameOptions().length).toBeGreaterThan(200);
    expect(lost).toEqual([]);
  });
});

// NEMA MG 1-2016 clause 4.4.1 and IEC 60072-1 Table 1 as their tables here have them, row by row: D, 2E, 2F and U.
test.each(nemaFootFrames.rows.map((row) => [row.frame, row] as const))(
  'NEMA %s: height, holes and shaft leave it among the frames left (MG 1 4.4.1)',
  (frame, { D, E, twoF, U }) => {
    const { fits } = framesMeasured(
      {
        ...{ shaftHeightMm: inMm(D[0] * IN), holesAlongMm: inMm(twoF[0] * IN), shaftDiameterMm: inMm(U[0] * IN) },
        ...(E && { holesAcrossMm: inMm(2 * E[0] * IN) }),
      },
      'none',
      'tape',
    );
    expect(names(fits)).toContain(frame);
  },
);

test.each(iecFootFrames.rows.map((row) => [row.frame, row] as const))(
  'IEC %s: height and holes leave it among the frames left (IEC 60072-1 Table 1)',
  (frame, { H, A, B }) => {
    const { fits } = framesMeasured({ shaftHeightMm: H[0], holesAcrossMm: A[0], holesAlongMm: B[0] }, 'none', 'tape');
    expect(fits.map(({ option }) => option.frame)).toContain(frame);
  },
);

test('28 mm is not 1 1/8 in: a tape leaves both families, a caliper one (MG 1 4.4.1: U = 1.125; IEC 60072-1: D = 28)', () => {
  // 112M stands 112 mm high and 182T 114.3 mm: a height of 113 mm could be either.
  const seen = { shaftHeightMm: 113, holesAcrossMm: 190 };
  const tape = framesMeasured({ ...seen, shaftDiameterMm: 28 }, 'none', 'tape');
  expect(names(tape.fits)).toEqual(expect.arrayContaining(['112M', '182T', '184T']));
  const twins = twinsOf(tape.fits);
  expect(twins?.differences.find(({ name }) => name === 'shaftDiameterMm')).toMatchObject({
    nemaMm: 28.575,
    iecMm: 28,
  });
  const caliper = framesMeasured({ shaftHeightMm: 112.5, holesAcrossMm: 190, shaftDiameterMm: 28 }, 'none', 'caliper');
  expect(names(caliper.fits)).toContain('112M');
  expect(names(caliper.fits)).not.toContain('182T');
  const near = caliper.near.find(({ option }) => option.frame === '182T');
  expect(near?.misfits.find(({ name }) => name === 'shaftDiameterMm')).toMatchObject({ have: 28, need: 28.575 });
});

test('132 mm stands between 213T and 132S: the holes along tell them apart, and 132S from 132M', () => {
  const { fits } = framesMeasured({ shaftHeightMm: 133, holesAcrossMm: 216 }, 'none', 'tape');
  expect(names(fits)).toEqual(expect.arrayContaining(['132S', '132M', '213T', '215T']));
  const next = tellApart(fits, { shaftHeightMm: 133, holesAcrossMm: 216 }, 'tape');
  const along = next.find(({ name }) => name === 'holesAlongMm');
  expect(along?.figures.map(({ mm }) => Math.round(mm))).toEqual([140, 178, 203]);
  const measured: Measured = { shaftHeightMm: 133, holesAcrossMm: 216, holesAlongMm: 178 };
  expect(names(framesMeasured(measured, 'none', 'tape').fits)).toContain('132M');
  expect(names(framesMeasured(measured, 'none', 'tape').fits)).not.toContain('132S');
});

test('the 1952 series and the older frames part by the shaft: 254U is 1 3/8 in, 254 1 1/8 in, 254T 1 5/8 in', () => {
  const of = (inches: number) =>
    names(
      framesMeasured(
        { shaftHeightMm: 159, holesAcrossMm: 254, holesAlongMm: 210, shaftDiameterMm: inches * IN },
        'none',
        'caliper',
      ).fits,
    );
  expect(of(1.375)).toEqual(['254U']);
  expect(of(1.125)).toEqual(['254']);
  expect(of(1.625)).toEqual(['254T']);
});

test('S after T is a short shaft and leaves the feet as they are; the IEC S is a short foot', () => {
  const feet = { shaftHeightMm: 178, holesAcrossMm: 279, holesAlongMm: 241 };
  expect(names(framesMeasured({ ...feet, shaftLengthMm: 117 }, 'none', 'tape').fits)).toContain('284T');
  const short = names(framesMeasured({ ...feet, shaftLengthMm: 82 }, 'none', 'tape').fits);
  expect(short).toContain('284TS');
  expect(short).not.toContain('284T');
});

test('a 2-pole motor of one IEC frame can have another shaft (IEC 60072-1 Table 1: 225M, 55 mm and 60 mm)', () => {
  const feet = { shaftHeightMm: 225, holesAcrossMm: 356, holesAlongMm: 311 };
  expect(names(framesMeasured({ ...feet, shaftDiameterMm: 55 }, 'none', 'caliper').fits)).toEqual(['225M, 2 poles']);
  expect(names(framesMeasured({ ...feet, shaftDiameterMm: 60 }, 'none', 'caliper').fits)).toEqual([
    '225M, 4 poles and more',
  ]);
});

test('a face that was seen rules out what has none, and free holes what has tapped ones', () => {
  const feet = { shaftHeightMm: 112, holesAcrossMm: 190, holesAlongMm: 140, shaftDiameterMm: 28 };
  expect(names(framesMeasured(feet, 'through', 'caliper').fits)).toEqual(['112M FF215']);
  expect(names(framesMeasured(feet, 'tapped', 'caliper').fits)).toEqual(['112M FT130', '112M FT165']);
  expect(names(framesMeasured({ ...feet, pitchCircleMm: 165 }, 'tapped', 'caliper').fits)).toEqual(['112M FT165']);
  const face = framesMeasured({ pitchCircleMm: 184, spigotMm: 216, shaftDiameterMm: 28.6 }, 'tapped', 'tape');
  expect(names(face.fits)).toEqual(expect.arrayContaining(['182TC', '184TC']));
});

test('what no table fixes is said and never taken for agreement; what nobody can be is told as nothing', () => {
  const { fits } = framesMeasured({ shaftHeightMm: 89, holesAcrossMm: 140, holeToShoulderMm: 57 }, 'tapped', 'tape');
  const pump = fits.find(({ option }) => option.frame === '143JM');
  expect(pump?.untold).toEqual(['holeToShoulderMm']);
  expect(framesMeasured({ shaftHeightMm: 400.5, shaftDiameterMm: 5 }, 'none', 'tape')).toEqual({ fits: [], near: [] });
  expect(framesMeasured({}, null, 'tape').fits).toEqual([]);
});

test('a tape reads to a sixteenth of an inch, a caliper tells 28 mm from 1 1/8 in', () => {
  expect(readsTo('shaftHeightMm', 'tape')).toBeCloseTo(IN / 16, 1);
  expect(2 * readsTo('shaftDiameterMm', 'caliper')).toBeLessThan(28.575 - 28);
});
