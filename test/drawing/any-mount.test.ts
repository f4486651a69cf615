import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '@/lib/drawing/drawing';
import { boxOf } from '@/lib/drawing/frame-view';
import type { Mount } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import { mountViews } from '@/lib/drawing/mount-views';
import { WORK_IDS } from '@/lib/plant/work';
import type { Face } from '@/lib/standards/dimension';
import { isInside } from './crossing';
import { ff215, nothingKnown, of112M, of184T } from './mounts';

const length = fc.option(fc.double({ min: 0.5, max: 2_000, noNaN: true }), { nil: null });
const face: fc.Arbitrary<Face> = fc
  .record({ pitchCircleMm: length, spigotMm: length, outsideMm: length, shoulderToFaceMm: length })
  .map((told) => ({ ...ff215, ...told }));
const mount = (name: string): fc.Arbitrary<Mount> =>
  fc
    .record({
      feet: fc.option(fc.boolean(), { nil: null }),
      heightMm: length,
      acrossMm: length,
      alongMm: length,
      alongOthersMm: fc.array(fc.double({ min: 1, max: 900, noNaN: true }), { maxLength: 2 }),
      footHoleMm: length,
      toShoulderMm: length,
      toShaftEndMm: length,
      shaftDiameterMm: length,
      shaftLengthMm: length,
      keyWidthMm: length,
      face: fc.option(face, { nil: null }),
      terminalBox: fc.constantFrom('left' as const, 'right' as const, 'top' as const, null),
    })
    .map((told) => ({ ...nothingKnown(name), ...told }));

const anyFacts: fc.Arbitrary<MountFacts> = fc.record({
  together: fc.constantFrom('holes', 'faces', 'shaft-ends'),
  shimsPresentMm: fc.option(fc.double({ min: 0, max: 30, noNaN: true }), { nil: null }),
  hub: fc.option(fc.record({ lengthMm: length, boreMm: length }), { nil: null }),
  boltMm: length,
  work: fc.subarray([...WORK_IDS]),
  act: fc.subarray(['foot-holes', 'face'] as const),
  unit: fc.constantFrom('mm', 'in'),
});

/** Every number in a drawing, wherever it stands. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

const textsOf = (view: Drawing): string[] => [
  view.sentence,
  ...view.details.map(({ sentence }) => sentence),
  ...view.dimensions.flatMap(({ upper, lower }) => [upper ?? '', lower ?? '']),
  ...view.labels.map(({ text }) => text),
];

describe('whatever is known of two motors', () => {
  it('no number is missing or endless, no text says so, and every view has some size', () => {
    fc.assert(
      fc.property(mount('M-IN'), fc.option(mount('M-OUT'), { nil: null }), anyFacts, (incoming, outgoing, facts) => {
        for (const view of mountViews(incoming, outgoing, facts)) {
          expect(numbersOf(view).every(Number.isFinite)).toBe(true);
          expect(textsOf(view).join(' ')).not.toMatch(/NaN|Infinity|null|undefined/);
          expect(view.viewBox.width).toBeGreaterThan(0);
          expect(view.viewBox.height).toBeGreaterThan(0);
          expect(view.textMm).toBeGreaterThan(0);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('what is drawn lies inside the view', () => {
    fc.assert(
      fc.property(mount('M-IN'), mount('M-OUT'), anyFacts, (incoming, outgoing, given) => {
        for (const { viewBox, shapes } of mountViews(incoming, outgoing, given))
          if (shapes.length > 0) expect(isInside(boxOf(shapes), viewBox)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('the text alternative', () => {
  const facts: MountFacts = {
    together: 'holes',
    shimsPresentMm: 1.5,
    hub: null,
    boltMm: null,
    work: [],
    act: [],
    unit: 'mm',
  };

  it('states the figures that the lines carry, of both motors', () => {
    for (const view of mountViews({ ...of112M, face: ff215 }, of184T, facts))
      for (const { upper, lower, name } of view.dimensions) {
        if (upper !== null && upper !== '?' && view.sentence.toLowerCase().includes(name))
          expect(view.sentence.toLowerCase()).toContain(`${name} ${upper} mm in`);
        if (lower !== null && lower !== '?') expect(view.sentence).toContain(`${lower} mm out`);
      }
    const [side, feet] = mountViews(of112M, of184T, facts);
    expect(side?.sentence).toBe(
      'Side view, to scale: M-IN goes in, M-OUT goes out, shafts in line, drive-end holes together. ' +
        'Shaft height 112 mm in, 114.3 mm out, difference −2.3 mm; ' +
        'shaft end from the drive-end holes 130 mm in, 139.7 mm out, difference −9.7 mm; ' +
        'holes along 140 mm in, 139.7 mm out, difference 0.3 mm; ' +
        'shaft diameter 28 mm in, 28.58 mm out, difference −0.58 mm. ' +
        'Under the feet: 3.8 mm, with no work asked for; under the old ones 1.5 mm of shims.',
    );
    expect(feet?.sentence).toContain('Holes across 190 mm in, 190.5 mm out');
  });

  it('states inches where inches are drawn', () => {
    const [side] = mountViews(of184T, null, { ...facts, unit: 'in' });
    expect(side?.sentence).toContain('Shaft height 4.5 in');
    expect(side?.dimensions.map(({ upper }) => upper)).toContain('4.5');
  });

  it('says that something is not known', () => {
    const [side] = mountViews({ ...of112M, toShaftEndMm: null }, of184T, facts);
    expect(side?.sentence).toContain('shaft end from the drive-end holes not known in, 139.7 mm out');
  });
});
