import { describe, expect, it } from 'vitest';
import type { Drawing, Point } from '@/lib/drawing/drawing';
import { boxOf } from '@/lib/drawing/frame-view';
import { boxOfText, textsOf } from '@/lib/drawing/placed-text';
import { doOverlap, edgeRunsThrough, isInside, runsThrough } from './crossing';
import { GROUPS, pairs } from './pairs';

/** The narrowest column: a 360 px phone less its gutters (look.md), and the least text on it. */
const COLUMN_PX = 328;
const LEAST_PX = 13;

/** Extension lines and leaders: what a text of another line must not be crossed by. */
function linesOf({ dimensions, labels, details }: Pick<Drawing, 'dimensions' | 'labels' | 'details'>) {
  const lines: [Point, Point][] = [];
  for (const { direction, from, to, at } of dimensions) {
    const [a, b] =
      direction === 'level'
        ? [
            { x: from.x, y: at },
            { x: to.x, y: at },
          ]
        : [
            { x: at, y: from.y },
            { x: at, y: to.y },
          ];
    lines.push([from, a], [to, b], [a, b]);
  }
  for (const { leader } of labels)
    for (const [i, point] of leader.entries()) {
      const next = leader[i + 1];
      if (next !== undefined) lines.push([point, next]);
    }
  for (const { leader } of details) lines.push([leader.from, leader.to]);
  return lines;
}

/** What is wrong with one view, in words. */
function faultsOf(view: Drawing): string[] {
  const { viewBox, textMm, shapes } = view;
  const faults: string[] = [];
  const lines = linesOf(view);
  // Fins and the like are many, and what stands over or beside all shapes meets none.
  const drawn = boxOf(shapes);
  const texts = textsOf(view).map((text) => ({ text: text.text, box: boxOfText(text, textMm) }));
  for (const [i, { text, box }] of texts.entries()) {
    if (!isInside(box, viewBox)) faults.push(`“${text}” leaves the view`);
    for (const other of texts.slice(i + 1)) if (doOverlap(box, other.box)) faults.push(`“${text}” on “${other.text}”`);
    for (const shape of doOverlap(box, drawn) ? shapes : [])
      if (shape.role !== 'centre' && edgeRunsThrough(shape, box))
        faults.push(`“${text}” is crossed by ${shape.role} ${shape.part}`);
    for (const [from, to] of lines) if (runsThrough(from, to, box)) faults.push(`“${text}” is crossed by a line`);
  }
  for (const ends of lines)
    for (const { x, y } of ends)
      if (!isInside({ x, y, width: 0, height: 0 }, viewBox)) faults.push('a line leaves the view');
  if ((textMm * COLUMN_PX) / viewBox.width < LEAST_PX) faults.push('its text is too small on a phone');
  for (const { letter, ...detail } of view.details) {
    const own = textsOf(detail).map((text) => ({ text: text.text, box: boxOfText(text, detail.textMm) }));
    for (const [i, { text, box }] of own.entries()) {
      if (!isInside(box, detail.viewBox)) faults.push(`${letter}: “${text}” leaves the detail`);
      for (const other of own.slice(i + 1))
        if (doOverlap(box, other.box)) faults.push(`${letter}: “${text}” on “${other.text}”`);
      for (const [from, to] of linesOf({ ...detail, details: [] }))
        if (runsThrough(from, to, box)) faults.push(`${letter}: “${text}” is crossed by a line`);
    }
  }
  return faults;
}

// Thousands of views: on a busy machine more than the usual five seconds.
describe.each(GROUPS)('%s', (_, motors, together) => {
  it('no text meets another, an outline, or the line of another; all stands inside and is large enough', () => {
    const faults: string[] = [];
    let seen = 0;
    for (const { incoming, outgoing, given, views } of pairs(motors, together))
      for (const view of views) {
        seen += 1;
        for (const fault of faultsOf(view))
          faults.push(`${incoming.name} for ${outgoing?.name} (${given.work.join(' ')}), ${view.caption}: ${fault}`);
      }
    expect(seen).toBeGreaterThan(1_000);
    expect(faults.slice(0, 40), `${faults.length} faults in ${seen} views`).toEqual([]);
  });
});
