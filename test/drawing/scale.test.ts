import { describe, expect, it } from 'vitest';
import type { Drawing, Part, Point, Role, Shape } from '@/lib/drawing/drawing';
import type { Mount } from '@/lib/drawing/mount';
import { mountViews } from '@/lib/drawing/mount-views';
import { facts, ff215, nothingKnown, of112M, of184T } from './mounts';

const SIDE = 'Side, shafts in line';
const FEET = 'Feet from above';
const FACE = 'Face from the drive end';

const viewOf = (caption: string, incoming: Mount, outgoing: Mount | null, given = facts): Drawing => {
  const found = mountViews(incoming, outgoing, given).find((view) => view.caption === caption);
  if (found === undefined) throw new Error(`no view ${caption}`);
  return found;
};

const shapesOf = (view: Drawing, part: Part, role: Role): Shape[] =>
  view.shapes.filter((shape) => shape.part === part && shape.role === role);

const pointsOf = (shapes: readonly Shape[]): Point[] =>
  shapes.flatMap((shape) => (shape.kind === 'polygon' ? [...shape.points] : []));

const extent = (shapes: readonly Shape[], axis: 'x' | 'y') => {
  const values = pointsOf(shapes).map((point) => point[axis]);
  return { least: Math.min(...values), most: Math.max(...values) };
};

const centresOf = (shapes: readonly Shape[]) =>
  shapes
    .flatMap((shape) => (shape.kind === 'circle' ? [shape.centre] : []))
    .map(({ x, y }) => `${x} ${y}`)
    .sort();

describe('from the side', () => {
  const view = viewOf(SIDE, of112M, of184T);

  it('the shafts are in line on y = 0 and as thick as they are', () => {
    expect(extent(shapesOf(view, 'shaft', 'in'), 'y')).toEqual({ least: -14, most: 14 });
    expect(extent(shapesOf(view, 'shaft', 'out'), 'y')).toEqual({ least: -14.2875, most: 14.2875 });
  });

  it('the feet stand as far below the shafts as the shaft heights, 2.3 mm apart', () => {
    const [foot, old] = [extent(shapesOf(view, 'foot', 'in'), 'y'), extent(shapesOf(view, 'foot', 'out'), 'y')];
    expect(foot.most).toBe(112);
    expect(old.most).toBe(114.3);
  });

  it('the shims to add fill exactly what the candidate is lower by', () => {
    const shim = extent(shapesOf(view, 'shim', 'shim'), 'y');
    expect(shim).toEqual({ least: 112, most: 114.3 });
  });

  it('the shims there now lie between the old feet and the base', () => {
    expect(extent(shapesOf(view, 'shims-present', 'base'), 'y')).toEqual({ least: 114.3, most: 115.8 });
    expect(extent(shapesOf(view, 'base', 'base'), 'y').least).toBe(115.8);
  });

  it('no shim is drawn under a candidate that stands higher', () => {
    expect(shapesOf(viewOf(SIDE, of184T, of112M), 'shim', 'shim')).toEqual([]);
  });

  it('the shaft ends lie as far before the drive-end holes as the tables say, 9.7 mm apart', () => {
    expect(extent(shapesOf(view, 'shaft', 'in'), 'x')).toEqual({ least: -130, most: -70 });
    expect(extent(shapesOf(view, 'shaft', 'out'), 'x')).toEqual({ least: -139.7, most: -69.85 });
  });

  it('the hub sits on the old shaft end and is as long as it is', () => {
    const hub = extent(shapesOf(view, 'hub', 'hub'), 'x');
    expect(hub.least).toBe(-139.7);
    expect(hub.most).toBeCloseTo(-79.7, 9);
  });

  it('a bushing fills the ring between shaft and bore', () => {
    const bushed = viewOf(SIDE, { ...of112M, shaftDiameterMm: 24 }, of184T, { ...facts, work: ['bushing'] });
    const rings = pointsOf(shapesOf(bushed, 'bushing', 'shim')).map(({ y }) => Math.abs(y));
    expect(Math.min(...rings)).toBeCloseTo(12, 9);
    expect(Math.max(...rings)).toBeCloseTo(14.2875, 9);
  });

  it('a dimension line is as long as the figure on it', () => {
    for (const [name, mm] of [
      ['shaft height', 112],
      ['shaft end from the drive-end holes', 130],
      ['holes along', 140],
    ] as const) {
      const line = view.dimensions.find((one) => one.name === name);
      expect(line, name).toBeDefined();
      if (line === undefined) continue;
      const length = line.direction === 'level' ? line.to.x - line.from.x : line.to.y - line.from.y;
      expect(Math.abs(length), name).toBeCloseTo(mm, 9);
      expect(line.upper, name).toBe(String(mm));
    }
  });

  it('a difference too small to be seen has a detail of its own', () => {
    const near = viewOf(SIDE, { ...of112M, heightMm: 113.9 }, of184T);
    expect(near.details.map(({ caption }) => caption)).toContain('A, shims');
    expect(near.details[0]?.labels.map(({ text }) => text)).toEqual(['0.4 to add', '1.5 stay']);
  });
});

describe('the feet from above', () => {
  const view = viewOf(FEET, of112M, of184T);

  it('the drive-end holes of both lie on x = 0, each pattern in its own measure', () => {
    expect(centresOf(shapesOf(view, 'foot-hole', 'hole'))).toEqual(['0 -95', '0 95', '140 -95', '140 95']);
    expect(centresOf(shapesOf(view, 'foot-hole', 'out-edge'))).toEqual([
      '0 -95.25',
      '0 95.25',
      '139.7 -95.25',
      '139.7 95.25',
    ]);
  });

  it('holes and bolts are as wide as they are', () => {
    const radii = view.shapes.flatMap((shape) =>
      shape.kind === 'circle' ? [`${shape.part} ${shape.role} ${shape.radiusMm}`] : [],
    );
    expect(new Set(radii)).toEqual(new Set(['foot-hole hole 6', 'foot-hole out-edge 5.207', 'bolt out 4']));
  });

  it('a foot with two patterns shows both, a shared hole once', () => {
    const two = viewOf(FEET, { ...of184T, alongOthersMm: [114.3] }, null);
    expect(centresOf(shapesOf(two, 'foot-hole', 'hole'))).toHaveLength(6);
    expect(two.labels.map(({ text }) => text)).toContain('also 114.3 along');
    expect(two.sentence).toContain('also 114.3 along');
  });

  it('holes that miss are marked where to act', () => {
    const missing = viewOf(FEET, of112M, of184T, { ...facts, act: ['foot-holes'] });
    expect(shapesOf(missing, 'foot-hole', 'act-line')).toHaveLength(4);
  });

  it('is not drawn for a motor without feet', () => {
    const captions = mountViews({ ...of112M, feet: false, face: ff215 }, null, facts).map(({ caption }) => caption);
    expect(captions).not.toContain(FEET);
  });
});

describe('the face from the drive end', () => {
  it('pitch circle, spigot and outside are circles about the shaft, in their own measure', () => {
    const view = viewOf(FACE, { ...of112M, face: ff215 }, null);
    const radii = (part: Part) =>
      view.shapes.flatMap((shape) => (shape.kind === 'circle' && shape.part === part ? [shape.radiusMm] : []));
    expect(radii('pitch-circle')).toContain(107.5);
    expect(radii('spigot')).toContain(90);
    expect(radii('face')).toContain(125);
    const holes = view.shapes.flatMap((shape) =>
      shape.kind === 'circle' && shape.part === 'face-hole' ? [shape] : [],
    );
    expect(holes).toHaveLength(4);
    for (const { centre, radiusMm } of holes) {
      expect(Math.hypot(centre.x, centre.y)).toBeCloseTo(107.5, 9);
      expect(radiusMm).toBe(7.25);
    }
  });
});

describe('what is not known', () => {
  it('draws nothing at all when nothing is known', () => {
    expect(mountViews(nothingKnown('M-IN'), nothingKnown('M-OUT'), facts)).toEqual([]);
  });

  it('has a question mark on the line, and no outline of its own', () => {
    const view = viewOf(SIDE, { ...of112M, heightMm: null }, of184T);
    const line = view.dimensions.find(({ name }) => name === 'shaft height');
    expect(line).toMatchObject({ upper: '?', lower: '114.3', isUnknown: true });
    expect(shapesOf(view, 'foot', 'in')).toEqual([]);
    expect(shapesOf(view, 'shim', 'shim')).toEqual([]);
  });

  it('of a set without a plate only the candidate is drawn, and the seat is said to be unknown', () => {
    const view = viewOf(SIDE, of112M, nothingKnown('seat of P-1'));
    expect(view.sentence).toContain('Shaft height 112 mm in, not known out');
    expect(view.shapes.some(({ role }) => role === 'out')).toBe(false);
  });
});
