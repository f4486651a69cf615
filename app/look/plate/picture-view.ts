/** How a picture is looked at: how large, which way up, how light, and where its middle lies from the window's, px. */
export interface PictureView {
  /** 1: the whole picture just fits the window. */
  scale: number;
  /** Quarter turns to the right. */
  turns: 0 | 1 | 2 | 3;
  brightness: number;
  contrast: number;
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

/** The window that it is seen through, and the picture as it was taken. */
export interface Sizes {
  window: Size;
  picture: Size;
}

export const WHOLE: PictureView = { scale: 1, turns: 0, brightness: 1, contrast: 1, x: 0, y: 0 };

const MOST = { scale: 12, light: 4 };
/** One press of a button. */
export const STEP = { scale: 1.5, light: 1.25, px: 60 };

/** Larger or smaller by a factor, about a point that keeps its place; the window's middle where none is told. */
export function zoomed(view: PictureView, factor: number, sizes: Sizes, about = { x: 0, y: 0 }): PictureView {
  const scale = within(view.scale * factor, 1, MOST.scale);
  const by = scale / view.scale;
  return held({ ...view, scale, x: about.x - (about.x - view.x) * by, y: about.y - (about.y - view.y) * by }, sizes);
}

/** A quarter turn to the right about the window's middle; what was there stays there. */
export const turned = (view: PictureView, sizes: Sizes): PictureView =>
  held({ ...view, turns: ((view.turns + 1) % 4) as PictureView['turns'], x: -view.y || 0, y: view.x }, sizes);

export const moved = (view: PictureView, x: number, y: number, sizes: Sizes): PictureView =>
  held({ ...view, x: view.x + x, y: view.y + y }, sizes);

export const lit = (view: PictureView, what: 'brightness' | 'contrast', factor: number): PictureView => ({
  ...view,
  [what]: within(view[what] * factor, 1 / MOST.light, MOST.light),
});

/** The style of an image that fills the window and contains its picture whole. */
export function styleOf(view: PictureView, sizes: Sizes | null): { transform: string; filter: string } {
  const { scale, turns, brightness, contrast, x, y } = view;
  // The browser fits the picture as it was taken; on its side it fits by another factor.
  const fit = sizes === null ? 1 : fitOf(sizes, turns) / fitOf(sizes, 0);
  return {
    transform: `translate(${round(x)}px, ${round(y)}px) rotate(${turns * 90}deg) scale(${round(scale * fit)})`,
    filter: `brightness(${round(brightness)}) contrast(${round(contrast)})`,
  };
}

/** The picture is never moved farther than its edge to the window's: what is looked for cannot be lost. */
function held(view: PictureView, { window, picture }: Sizes): PictureView {
  const { width, height } = upright(picture, view.turns);
  const by = fitOf({ window, picture }, view.turns) * view.scale;
  const spare = (length: number, of: number) => Math.max(0, (length * by - of) / 2);
  const [wide, high] = [spare(width, window.width), spare(height, window.height)];
  return { ...view, x: within(view.x, -wide, wide), y: within(view.y, -high, high) };
}

function fitOf({ window, picture }: Sizes, turns: PictureView['turns']): number {
  const { width, height } = upright(picture, turns);
  return Math.min(window.width / width, window.height / height);
}

const upright = ({ width, height }: Size, turns: PictureView['turns']): Size =>
  turns % 2 === 0 ? { width, height } : { width: height, height: width };

const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value)) || 0;
const round = (value: number) => Math.round(value * 1_000) / 1_000;
