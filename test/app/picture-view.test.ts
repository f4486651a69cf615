import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lit, moved, type PictureView, STEP, styleOf, turned, WHOLE, zoomed } from '@/app/look/plate/picture-view';

/** A window of 300 by 200 px before a picture of 1 200 by 600: it fits at a quarter, 300 by 150. */
const sizes = { window: { width: 300, height: 200 }, picture: { width: 1_200, height: 600 } };

describe('a picture in its window', () => {
  test('fits whole, and cannot be moved while it does', () => {
    expect(styleOf(WHOLE, sizes)).toEqual({
      transform: 'translate(0px, 0px) rotate(0deg) scale(1)',
      filter: 'brightness(1) contrast(1)',
    });
    expect(moved(WHOLE, 50, -50, sizes)).toEqual(WHOLE);
  });

  test('twice as large it is 600 by 300, and moves by half of what sticks out, 150 and 50', () => {
    const large = zoomed(WHOLE, 2, sizes);
    expect(large).toEqual({ ...WHOLE, scale: 2 });
    expect(moved(large, 40, 20, sizes)).toMatchObject({ x: 40, y: 20 });
    expect(moved(large, 1_000, -1_000, sizes)).toMatchObject({ x: 150, y: -50 });
  });

  test('enlarged about a point, that point keeps its place', () => {
    const large = zoomed(WHOLE, 2, sizes, { x: 75, y: 50 });
    // What lay 75 px right of the middle lies 150 px right of the picture's middle now.
    expect(large).toMatchObject({ x: 75 - 150, y: 50 - 100 });
  });

  test('on its side it fits by its length, and what was in the middle stays there', () => {
    const side = turned(WHOLE, sizes);
    // 600 by 1 200 in 300 by 200: a sixth, where the browser fitted it by a quarter.
    expect(styleOf(side, sizes).transform).toBe('translate(0px, 0px) rotate(90deg) scale(0.667)');
    const large = moved(zoomed(WHOLE, 4, sizes), 100, 30, sizes);
    expect(turned(large, sizes)).toMatchObject({ turns: 1, x: -30, y: 100 });
  });

  test('gets no smaller than whole, no larger than twelve times, no lighter than four times', () => {
    const often = (step: (view: PictureView) => PictureView) =>
      Array.from({ length: 40 }).reduce<PictureView>(step, WHOLE);
    expect(often((view) => zoomed(view, 1 / STEP.scale, sizes))).toEqual(WHOLE);
    expect(often((view) => zoomed(view, STEP.scale, sizes)).scale).toBe(12);
    expect(often((view) => lit(view, 'brightness', STEP.light)).brightness).toBe(4);
    expect(often((view) => lit(view, 'contrast', 1 / STEP.light)).contrast).toBe(0.25);
  });

  test('whatever is done to it, the window’s middle shows the picture, and four turns are none', () => {
    const step = fc.oneof(
      fc.double({ min: 0.1, max: 10, noNaN: true }).map((by) => (view: PictureView) => zoomed(view, by, sizes)),
      fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 })).map(
        ([x, y]) =>
          (view: PictureView) =>
            moved(view, x, y, sizes),
      ),
      fc.constant((view: PictureView) => turned(view, sizes)),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const view = steps.reduce((now, next) => next(now), WHOLE);
        const side = view.turns % 2 === 1;
        const fit = side ? 1 / 6 : 1 / 4;
        const [width, height] = side ? [600, 1_200] : [1_200, 600];
        expect(Math.abs(view.x)).toBeLessThanOrEqual((width * fit * view.scale) / 2 + 1e-6);
        expect(Math.abs(view.y)).toBeLessThanOrEqual((height * fit * view.scale) / 2 + 1e-6);
        expect([1, 2, 3, 4].reduce((now) => turned(now, sizes), { ...view, x: 0, y: 0 })).toEqual({
          ...view,
          x: 0,
          y: 0,
        });
      }),
    );
  });
});
