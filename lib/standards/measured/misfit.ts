import type { Face } from '../dimension';
import type { FrameOption } from './frame-options';

/** What can be measured at a motor, in the order in which it is done. */
export const MEASURABLE = [
  'shaftHeightMm',
  'holesAcrossMm',
  'holesAlongMm',
  'holeToShoulderMm',
  'shaftDiameterMm',
  'shaftLengthMm',
  'keyWidthMm',
  'pitchCircleMm',
  'spigotMm',
  'faceDiameterMm',
] as const;
export type Measurable = (typeof MEASURABLE)[number];

/** What a person measured, mm; what is not there was not measured. */
export type Measured = Readonly<Partial<Record<Measurable, number>>>;

/** What it was measured with. */
export type Tool = 'tape' | 'caliper';

/**
 * How far a reading can lie from what is there, mm. A tape reads to 1/16 in, and across a shaft or a hole no better than
 * 1 mm; a caliper to 0.1 mm where it reaches, and the distances that it does not span are read by a tape with care.
 * Common practice, no source.
 */
const READS_TO: Readonly<Record<Tool, Readonly<Record<'distance' | 'diameter', number>>>> = {
  tape: { distance: 1.6, diameter: 1 },
  caliper: { distance: 0.8, diameter: 0.15 },
};
const DIAMETERS: readonly Measurable[] = ['shaftDiameterMm', 'keyWidthMm', 'spigotMm'];

export const readsTo = (name: Measurable, tool: Tool): number =>
  READS_TO[tool][DIAMETERS.includes(name) ? 'diameter' : 'distance'];

export interface Misfit {
  name: Measurable;
  have: number;
  /** The frame's own figure, the nearest where it has several; null: the standard does not fix it. */
  need: number | null;
  /** have − need. */
  difference: number | null;
  /** How far it lies beyond what tolerance and reading allow; 0: it agrees; null: not known. */
  beyond: number | null;
  cite: string | null;
}

/** What was measured against the figures of one frame. */
export function misfitsOf(option: FrameOption, measured: Measured, tool: Tool): Misfit[] {
  return MEASURABLE.flatMap((name) => {
    const have = measured[name];
    return have === undefined ? [] : [misfitOf(option, name, have, readsTo(name, tool))];
  });
}

function misfitOf(option: FrameOption, name: Measurable, have: number, reads: number): Misfit {
  const figure = figureOf(option, name);
  if (figure === null) return { name, have, need: null, difference: null, beyond: null, cite: null };
  const need = figure.values.reduce((best, value) => (Math.abs(have - value) < Math.abs(have - best) ? value : best));
  const difference = have - need;
  const above = difference - figure.plus - reads;
  const below = -difference - figure.minus - reads;
  return { name, have, need, difference, beyond: Math.max(0, above, below), cite: figure.cite };
}

interface Figure {
  values: readonly [number, ...number[]];
  plus: number;
  minus: number;
  cite: string | null;
}

/** A frame's figure with its tolerance; null where the standard does not fix it. */
export function figureOf({ fit }: FrameOption, name: Measurable): Figure | null {
  switch (name) {
    case 'pitchCircleMm':
      return ofFace(fit.face, fit.face?.pitchCircleMm);
    case 'spigotMm':
      return ofFace(fit.face, fit.face?.spigotMm);
    case 'faceDiameterMm':
      return ofFace(fit.face, fit.face?.outsideMm);
    default: {
      const { value, alternatives, plus, minus, cite } = fit.dimensions[name];
      return value === null
        ? null
        : { values: [value, ...alternatives], plus: plus ?? 0, minus: Math.max(0, minus ?? 0), cite };
    }
  }
}

const ofFace = (face: Face | null, value: number | null | undefined): Figure | null =>
  value == null ? null : { values: [value], plus: 0, minus: 0, cite: face?.cite ?? null };
