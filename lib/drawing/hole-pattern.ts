import type { Point } from './drawing';
import type { Mount } from './mount';

/** The four holes of one pattern, the drive-end ones at `x`; none where a distance is not known. */
export function patternOf(acrossMm: number | null, alongMm: number | null, x: number): Point[] {
  if (acrossMm === null || alongMm === null) return [];
  return [-acrossMm / 2, acrossMm / 2].flatMap((y) => [x, x + alongMm].map((at) => ({ x: at, y })));
}

/** The motor's own pattern and those its feet also have; a hole two patterns share is drawn once. */
export function holesOf({ acrossMm, alongMm, acrossOthersMm, alongOthersMm }: Mount, holesX: number): Point[] {
  const all = [acrossMm, ...acrossOthersMm].flatMap((across) =>
    [alongMm, ...alongOthersMm].flatMap((along) => patternOf(across, along, holesX)),
  );
  const seen = new Set<string>();
  return all.filter(({ x, y }) => {
    const key = `${x} ${y}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** The hole that shows all of a difference: at the far end, on the far side. */
export const farHole = ({ acrossMm, alongMm }: Mount, holesX: number): Point | null =>
  patternOf(acrossMm, alongMm, holesX)[1] ?? null;
