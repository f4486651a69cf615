import { describe, expect, it } from 'vitest';
import type { Drawing, Role, Shape } from '@/lib/drawing/drawing';
import type { Mount } from '@/lib/drawing/mount';
import { textsOf } from '@/lib/drawing/placed-text';
import { GROUPS, pairs } from './pairs';

/** What half of the last digit of a figure is, mm: hundredths of a mm, thousandths of an inch. */
const HALF_DIGIT = { mm: 0.00501, in: 0.01271 } as const;
const MM = { mm: 1, in: 25.4 } as const;

/** How much of y the shapes of one part take. */
function spanOf(shapes: readonly Shape[], part: Shape['part'], roles: readonly Role[]): number | null {
  const ys = shapes
    .filter((shape) => shape.part === part && roles.includes(shape.role))
    .flatMap((shape) => {
      if (shape.kind === 'polygon') return shape.points.map(({ y }) => y);
      return shape.kind === 'circle' ? [shape.centre.y] : [];
    });
  return ys.length === 0 ? null : Math.max(...ys) - Math.min(...ys);
}

/** Each thing drawn of both motors that has a figure: how wide it is drawn, and what it is. */
function spansOf({ caption, shapes }: Drawing, incoming: Mount, outgoing: Mount | null) {
  const of = (part: Shape['part'], own: Role, old: readonly Role[], read: (mount: Mount) => number | null) => [
    { drawn: spanOf(shapes, part, [own]), is: read(incoming) },
    { drawn: spanOf(shapes, part, old), is: outgoing === null ? null : read(outgoing) },
  ];
  if (caption === 'Face from the drive end') return [];
  const shafts = of('shaft', 'in', ['out-edge'], (mount) => mount.shaftDiameterMm);
  if (caption !== 'Feet from above') return shafts;
  const widest = (mount: Mount) => (mount.acrossMm === null ? null : Math.max(mount.acrossMm, ...mount.acrossOthersMm));
  return [
    ...shafts,
    { drawn: spanOf(shapes, 'foot-hole', ['hole']), is: widest(incoming) },
    ...(outgoing === null
      ? []
      : [{ drawn: spanOf(shapes, 'foot-hole', ['out-edge', 'act-line']), is: outgoing.acrossMm }]),
  ];
}

const figuresIn = (text: string): string[] => text.match(/−?\d+(\.\d+)?/g) ?? [];

// Thousands of views: on a busy machine more than the usual five seconds.
describe.each(GROUPS)('%s', (_, motors, together) => {
  it('a line is as long as its figure, and both motors are drawn to the same scale by their own figures', () => {
    const faults: string[] = [];
    let seen = 0;
    for (const { incoming, outgoing, given, views } of pairs(motors, together))
      for (const view of views) {
        const where = `${incoming.name} for ${outgoing?.name}, ${view.caption}`;
        for (const { name, from, to, direction, upper, lower } of view.dimensions) {
          const text = upper === '?' ? lower : upper;
          if (text === null) continue;
          seen += 1;
          const drawn = Math.abs(direction === 'level' ? to.x - from.x : to.y - from.y);
          const figure = Math.abs(Number(text.replace('−', '-'))) * MM[given.unit];
          if (!(Math.abs(drawn - figure) <= HALF_DIGIT[given.unit]))
            faults.push(`${where}: ${name} ${drawn} is ${text}`);
        }
        for (const { drawn, is } of spansOf(view, incoming, outgoing)) {
          if (drawn === null) continue;
          seen += 1;
          if (is === null || Math.abs(drawn - is) > 1e-6) faults.push(`${where}: ${drawn} drawn for ${is}`);
        }
      }
    expect(seen).toBeGreaterThan(2_000);
    expect(faults.slice(0, 20), `${faults.length} faults`).toEqual([]);
  });

  it('whatever figure is drawn, the words say it too; a question mark is said to be not known', () => {
    const faults: string[] = [];
    let seen = 0;
    for (const { incoming, outgoing, views } of pairs(motors, together))
      for (const view of views)
        for (const one of [view, ...view.details]) {
          const said = new Set(figuresIn(one.sentence));
          const besides = 'figures' in one && one.figures !== null ? [one.figures] : [];
          for (const text of [...textsOf({ ...one, details: [] }).map((placed) => placed.text), ...besides]) {
            seen += 1;
            const isSaid = figuresIn(text).every((figure) => said.has(figure));
            if (!isSaid || (text.includes('?') && !one.sentence.includes('not known')))
              faults.push(`${incoming.name} for ${outgoing?.name}: ${text} is not in “${one.sentence}”`);
          }
        }
    expect(seen).toBeGreaterThan(2_000);
    expect(faults.slice(0, 20), `${faults.length} faults`).toEqual([]);
  });
});
