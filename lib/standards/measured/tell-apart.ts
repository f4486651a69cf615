import type { FrameFound } from './frames-measured';
import { figureOf, MEASURABLE, type Measurable, type Measured, readsTo, type Tool } from './misfit';
import { nameOf } from './name-of';
import { ON_FACE, type Seen } from './seen';

/** A reading that parts the frames left: its figures, each with the frames that have it. */
export interface TellsApart {
  name: Measurable;
  /** It was read by a tape, and a caliper would part them. */
  isAgain: boolean;
  figures: { mm: number; frames: string[] }[];
}

/**
 * What to measure next so that fewer frames are left, what parts them best first. A face is not measured before somebody
 * looked whether there is one.
 */
export function tellApart(fits: readonly FrameFound[], measured: Measured, seen: Seen, tool: Tool): TellsApart[] {
  return MEASURABLE.flatMap((name): (TellsApart & { left: number })[] => {
    if (seen.face === null && ON_FACE.includes(name)) return [];
    const isAgain = measured[name] !== undefined;
    if (isAgain && tool === 'caliper') return [];
    const figures = figuresOf(fits, name, readsTo(name, isAgain ? 'caliper' : tool));
    const known = figures.reduce((sum, { frames }) => sum + frames.length, 0);
    // How many are left on average; one of which the standard tells nothing here is left whatever is read.
    const left = figures.reduce((sum, { frames }) => sum + frames.length ** 2, 0) / known + fits.length - known;
    return figures.length > 1 ? [{ name, isAgain, figures, left }] : [];
  })
    .sort((a, b) => Number(a.isAgain) - Number(b.isAgain) || a.left - b.left)
    .map(({ left: _, ...one }) => one);
}

/** The figures that the tool can tell from each other. */
function figuresOf(fits: readonly FrameFound[], name: Measurable, reads: number): TellsApart['figures'] {
  const all = fits
    .flatMap(({ option }) => {
      const figure = figureOf(option, name);
      return figure === null ? [] : [{ mm: figure.values[0], frame: nameOf(option) }];
    })
    .sort((a, b) => a.mm - b.mm);
  const groups: TellsApart['figures'] = [];
  for (const { mm, frame } of all) {
    const last = groups.at(-1);
    if (last !== undefined && mm - last.mm <= 2 * reads) {
      if (!last.frames.includes(frame)) last.frames.push(frame);
    } else groups.push({ mm, frames: [frame] });
  }
  return groups;
}

/** The frames left with a face and without one, where a look at the shaft end would part them; null where it would not. */
export function facesApart(fits: readonly FrameFound[], seen: Seen): { bare: string[]; faced: string[] } | null {
  if (seen.face !== null) return null;
  const named = (isFaced: boolean) =>
    fits.filter(({ option }) => (option.fit.face !== null) === isFaced).map(({ option }) => nameOf(option));
  const [bare, faced] = [named(false), named(true)];
  return bare.length > 0 && faced.length > 0 ? { bare, faced } : null;
}
