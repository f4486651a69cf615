import { describe, expect, it } from 'vitest';
import type { Detail, Drawing, Part, Role, Shape } from '@/lib/drawing/drawing';
import type { Mount } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import { mountViews } from '@/lib/drawing/mount-views';
import { facts, ff215, of112M, of184T } from './mounts';

// Figures: mounts.ts names the clauses. 184T stands 114.3 high and 112M stands 112: 2.3 mm between them, above 1.5 mm of shims.

const SIDE = 0;
const FEET = 1;
const FACE = 2;

function view(at: number, incoming: Mount, outgoing: Mount, given: Partial<MountFacts>): Drawing {
  const found = mountViews(incoming, outgoing, { ...facts, ...given })[at];
  if (found === undefined) throw new Error('no such view');
  return found;
}

const of = (shapes: readonly Shape[], part: Part, role: Role) =>
  shapes.filter((shape) => shape.part === part && shape.role === role);

/** Least and most of one axis over polygons. */
function extent(shapes: readonly Shape[], axis: 'x' | 'y'): [number, number] {
  const all = shapes.flatMap((shape) => (shape.kind === 'polygon' ? shape.points.map((point) => point[axis]) : []));
  return [Math.min(...all), Math.max(...all)];
}

const textsOf = ({ labels }: Drawing | Detail) => labels.map(({ text }) => text);

/** A 112M that stands 90 high: 25.8 mm of room under it at the seat of a 184T. */
const low: Mount = { ...of112M, heightMm: 90 };

describe('under the feet', () => {
  it.each([SIDE, FACE])('shims: the new over those that stay, 3.8 in all where 1.5 was (view %i)', (at) => {
    const drawn = view(at, { ...of112M, face: ff215 }, of184T, { work: ['shims'] });
    expect(extent(of(drawn.shapes, 'shim', 'shim'), 'y')).toEqual([112, 114.3]);
    expect(extent(of(drawn.shapes, 'shims-present', 'base'), 'y')).toEqual([114.3, 115.8]);
    const line = drawn.dimensions.find(({ name }) => name === 'under the feet');
    expect([line?.from.y, line?.to.y]).toEqual([112, 115.8]);
    expect(textsOf(drawn)).toEqual(expect.arrayContaining(['shims 3.8', 'was 1.5']));
    expect(drawn.sentence).toContain('Under each foot: shims of 3.8 mm in, 1.5 mm out, 2.3 mm to add.');
  });

  it('shims to take out: those that stay lie under the candidate, and the words say how much goes', () => {
    const drawn = view(SIDE, of184T, of112M, { work: ['shims'], shimsPresentMm: 4 });
    expect(of(drawn.shapes, 'shim', 'shim')).toEqual([]);
    const [top, bottom] = extent(of(drawn.shapes, 'shims-present', 'base'), 'y');
    expect([top, bottom]).toEqual([114.3, 116]);
    expect(drawn.sentence).toContain('shims of 1.7 mm in, 4 mm out, 2.3 mm to take out.');
  });

  it('where nobody told what lies there now, the line says so and no layer is made up', () => {
    const drawn = view(SIDE, of112M, of184T, { work: ['shims'], shimsPresentMm: null });
    expect(of(drawn.shapes, 'shims-present', 'base')).toEqual([]);
    expect(textsOf(drawn)).toEqual(expect.arrayContaining(['shims 2.3 + ?', 'was ?']));
    expect(drawn.dimensions.find(({ name }) => name === 'under the feet')?.isUnknown).toBe(true);
    expect(drawn.sentence).toContain('2.3 mm and what lies there now, not known');
  });

  it.each([SIDE, FACE])('ground blocks fill all the room under each foot, in place of the shims (view %i)', (at) => {
    const drawn = view(at, { ...low, face: ff215 }, of184T, { work: ['ground-block'] });
    const blocks = of(drawn.shapes, 'block', 'new');
    expect(blocks).toHaveLength(2);
    expect(extent(blocks, 'y')).toEqual([90, 115.8]);
    expect(of(drawn.shapes, 'shims-present', 'base')).toEqual([]);
    expect(textsOf(drawn)).toContain('blocks 25.8');
    expect(drawn.sentence).toContain('Under each foot: a ground block of 25.8 mm, in place of 1.5 mm of shims.');
  });

  it.each([SIDE, FACE])('a transition base is one plate under the feet and the old bolts (view %i)', (at) => {
    const drawn = view(at, { ...low, face: ff215 }, of184T, { work: ['transition-base'] });
    const plate = of(drawn.shapes, 'plate', 'new');
    expect(plate).toHaveLength(1);
    expect(extent(plate, 'y')).toEqual([90, 115.8]);
    const [from, to] = extent(plate, 'x');
    expect(from).toBeLessThan(at === SIDE ? 0 : -190.5 / 2);
    expect(to).toBeGreaterThan(at === SIDE ? 139.7 : 190.5 / 2);
    expect(textsOf(drawn)).toContain('plate 25.8');
    expect(drawn.sentence).toContain('a transition base 25.8 mm high');
  });

  it('nothing is laid under feet that would stand in the base, whatever the work', () => {
    const drawn = view(SIDE, of184T, of112M, { work: ['ground-block'], shimsPresentMm: 0.5 });
    expect(drawn.shapes.filter(({ part }) => part === 'block' || part === 'shim')).toEqual([]);
    expect(textsOf(drawn)).toContain('in base 1.8');
    expect(drawn.sentence).toContain('The feet would stand 1.8 mm in the base');
  });

  it('without work for it nothing is drawn in the gap but what lies there now', () => {
    const drawn = view(SIDE, of112M, of184T, { work: [] });
    expect(of(drawn.shapes, 'shim', 'shim')).toEqual([]);
    expect(textsOf(drawn)).toEqual(expect.arrayContaining(['under feet 3.8', 'was 1.5']));
  });

  it('the same height leaves the shims as they are', () => {
    const drawn = view(SIDE, of184T, of184T, { work: [] });
    expect(textsOf(drawn)).toEqual([]);
    expect(drawn.sentence).toContain('Under the feet: 1.5 mm of shims, which stay.');
  });
});

describe('the shaft end', () => {
  it('a spacer is as long as the candidate ends short, and the hub moves with it', () => {
    const drawn = view(SIDE, of112M, of184T, { work: ['spacer-coupling', 'new-hub'] });
    expect(extent(of(drawn.shapes, 'spacer', 'new'), 'x')).toEqual([-139.7, -130]);
    expect(extent(of(drawn.shapes, 'hub', 'act-line'), 'x')).toEqual([-130, -70]);
    expect(textsOf(drawn)).toEqual(expect.arrayContaining(['spacer +9.7', 'new hub Ø28']));
    expect(drawn.sentence).toContain('A spacer 9.7 mm longer');
    expect(drawn.sentence).toContain('A new hub bored 28 mm');
  });

  it.each([
    ['bushing', 'bushing Ø28.58 / Ø28'],
    ['sleeve', 'sleeve Ø28.58 / Ø28'],
  ] as const)('a %s fills the ring between bore and shaft', (id, text) => {
    const drawn = view(SIDE, of112M, of184T, { work: [id] });
    const rings = of(drawn.shapes, 'bushing', 'shim').flatMap((ring) => (ring.kind === 'polygon' ? ring.points : []));
    const heights = rings.map(({ y }) => Math.abs(y));
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([14, expect.closeTo(14.2875, 9)]);
    expect(textsOf(drawn)).toContain(text);
  });
});

describe('the holes in the base', () => {
  const circlesOf = (shapes: readonly Shape[]) =>
    shapes.flatMap((shape) => (shape.kind === 'circle' ? [`${shape.centre.x} ${shape.centre.y}`] : [])).sort();

  it('a hole well beside the old one is drilled anew under the candidate’s', () => {
    const wide: Mount = { ...of112M, acrossMm: 160 };
    const drawn = view(FEET, wide, of184T, { work: ['slot-or-redrill'], act: ['foot-holes'] });
    expect(circlesOf(of(drawn.shapes, 'new-hole', 'act-line'))).toEqual(['0 -80', '0 80', '140 -80', '140 80']);
    expect(of(drawn.shapes, 'foot-hole', 'out-edge')).toHaveLength(4);
    expect(drawn.sentence).toContain('slotted or redrilled');
  });

  it('one that would run into the old one is a slot over both, as wide as the bolt', () => {
    const near: Mount = { ...of112M, acrossMm: 184 };
    const drawn = view(FEET, near, of184T, { work: ['slot-or-redrill'], act: ['foot-holes'] });
    const slots = of(drawn.shapes, 'slot', 'act-line');
    expect(slots).toHaveLength(4);
    const [top, bottom] = extent(slots, 'y');
    expect([top, bottom]).toEqual([expect.closeTo(-95.25 - 4, 6), expect.closeTo(95.25 + 4, 6)]);
  });

  it('where nothing is drilled, holes that miss say so in words as well as in blue', () => {
    const drawn = view(FEET, { ...of112M, acrossMm: 160 }, of184T, { work: [], act: ['foot-holes'] });
    expect(of(drawn.shapes, 'foot-hole', 'act-line')).toHaveLength(4);
    expect(textsOf(drawn)).toContain('holes miss');
    expect(drawn.sentence).toContain('Holes and bolts miss each other.');
  });

  it('a motor that is bolted down elsewhere stands with its shaft end where the old one was', () => {
    const given = { work: ['transition-base'], together: 'shaft-ends' } as const;
    const [side, feet] = [view(SIDE, low, of184T, given), view(FEET, low, of184T, given)];
    expect(extent(of(side.shapes, 'shaft', 'in'), 'x')[0]).toBeCloseTo(-139.7, 9);
    // 130 for 139.7: the new holes lie 9.7 nearer to the pump than the old bolts.
    const moved = feet.dimensions.find(({ name }) => name === 'new holes from the old bolts');
    expect(moved).toMatchObject({ upper: '9.7', lower: null, tone: 'act' });
    expect(feet.sentence).toContain('Its holes stand 9.7 mm nearer to the pump than the old bolts.');
    expect(circlesOf(of(feet.shapes, 'new-hole', 'act-line'))).toHaveLength(4);
    expect(of(feet.shapes, 'plate', 'act-line')).toHaveLength(1);
  });
});
