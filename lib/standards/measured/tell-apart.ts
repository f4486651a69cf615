import type { FrameFound } from './frames-measured';
import { figureOf, MEASURABLE, type Measurable, type Measured, readsTo, type Tool } from './misfit';

/** A reading not taken yet that parts the frames left: its figures, each with the frames that have it. */
export interface TellsApart {
  name: Measurable;
  figures: { mm: number; frames: string[] }[];
}

/** What to measure next so that fewer frames are left, what parts them best first. */
export function tellApart(fits: readonly FrameFound[], measured: Measured, tool: Tool): TellsApart[] {
  const told = MEASURABLE.filter((name) => measured[name] === undefined).flatMap((name): TellsApart[] => {
    const figures = figuresOf(fits, name, readsTo(name, tool));
    return figures.length > 1 ? [{ name, figures }] : [];
  });
  return told.sort((a, b) => b.figures.length - a.figures.length);
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

export const nameOf = ({ frame, poles }: { frame: string; poles: 2 | 4 | null }): string =>
  poles === null ? frame : `${frame}, ${poles === 2 ? '2 poles' : '4 poles and more'}`;

/** A NEMA and an IEC frame that what was measured does not part, though they do not fit each other. */
export interface Twins {
  nema: string;
  iec: string;
  differences: { name: Measurable; nemaMm: number; iecMm: number; difference: number }[];
}

/** Null where only one family is left. The nearest of each are held against each other. */
export function twinsOf(fits: readonly FrameFound[]): Twins | null {
  const of = (system: 'NEMA' | 'IEC') => fits.find(({ option }) => option.system === system)?.option;
  const [nema, iec] = [of('NEMA'), of('IEC')];
  if (nema === undefined || iec === undefined) return null;
  const differences = MEASURABLE.flatMap((name) => {
    const [a, b] = [figureOf(nema, name), figureOf(iec, name)];
    if (a === null || b === null || a.values[0] === b.values[0]) return [];
    return [{ name, nemaMm: a.values[0], iecMm: b.values[0], difference: a.values[0] - b.values[0] }];
  });
  return { nema: nameOf(nema), iec: nameOf(iec), differences };
}
