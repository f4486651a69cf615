import type { Box, Point, Shape } from '@/lib/drawing/drawing';

/** Touching is not overlapping: boxes are taken a hair smaller. */
const HAIR = 1e-6;

export const doOverlap = (a: Box, b: Box): boolean =>
  a.x + HAIR < b.x + b.width &&
  b.x + HAIR < a.x + a.width &&
  a.y + HAIR < b.y + b.height &&
  b.y + HAIR < a.y + a.height;

export const isInside = (inner: Box, outer: Box): boolean =>
  inner.x >= outer.x - HAIR &&
  inner.y >= outer.y - HAIR &&
  inner.x + inner.width <= outer.x + outer.width + HAIR &&
  inner.y + inner.height <= outer.y + outer.height + HAIR;

/** Does a straight line run through a box? It is cut to each pair of edges in turn. */
export function runsThrough(from: Point, to: Point, box: Box): boolean {
  let [start, end] = [0, 1];
  for (const [at, way, low, high] of [
    [from.x, to.x - from.x, box.x + HAIR, box.x + box.width - HAIR],
    [from.y, to.y - from.y, box.y + HAIR, box.y + box.height - HAIR],
  ] as const) {
    if (way === 0) {
      if (at <= low || at >= high) return false;
      continue;
    }
    const [near, far] = [(low - at) / way, (high - at) / way].toSorted((a, b) => a - b) as [number, number];
    start = Math.max(start, near);
    end = Math.min(end, far);
    if (start >= end) return false;
  }
  return true;
}

/** Does the edge of a shape run through a box? */
export function edgeRunsThrough(shape: Shape, box: Box): boolean {
  switch (shape.kind) {
    case 'line':
      return runsThrough(shape.from, shape.to, box);
    case 'polygon':
      return shape.points.some((from, i) => {
        const to = shape.points[(i + 1) % shape.points.length];
        return to !== undefined && runsThrough(from, to, box);
      });
    case 'circle': {
      const { centre, radiusMm: r } = shape;
      const xs = [box.x - centre.x, box.x + box.width - centre.x];
      const ys = [box.y - centre.y, box.y + box.height - centre.y];
      const furthest = Math.hypot(Math.max(...xs.map(Math.abs)), Math.max(...ys.map(Math.abs)));
      const nearest = Math.hypot(outOf(xs), outOf(ys));
      return nearest < r - HAIR && furthest > r + HAIR;
    }
  }
}

/** How far 0 lies outside of two bounds. */
const outOf = ([low, high]: number[]): number => Math.max(low ?? 0, -(high ?? 0), 0);
