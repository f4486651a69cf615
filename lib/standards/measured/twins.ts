import type { FrameOption } from './frame-options';
import type { FrameFound, FramesMeasured } from './frames-measured';
import { figureOf, MEASURABLE, type Measurable } from './misfit';
import { nameOf } from './name-of';

/** A NEMA and an IEC frame that are taken for each other, though neither fits in the other’s place. */
export interface Twins {
  nema: string;
  iec: string;
  /** What was measured leaves both; else only the one whose family is told. */
  left: 'both' | 'NEMA' | 'IEC';
  differences: { name: Measurable; nemaMm: number; iecMm: number; difference: number }[];
}

/** Farther off than this nobody takes one for the other. */
const TAKEN_FOR_MM = 4;

/** Null where nothing of the other family is near. The nearest of each are held against each other. */
export function twinsOf({ fits, near }: FramesMeasured): Twins | null {
  const of = (system: FrameOption['system']): FrameFound | undefined =>
    [...fits, ...near.filter(({ worst }) => worst <= TAKEN_FOR_MM)].find(({ option }) => option.system === system);
  const [nema, iec] = [of('NEMA'), of('IEC')];
  if (fits.length === 0 || nema === undefined || iec === undefined) return null;
  const differences = MEASURABLE.flatMap((name) => {
    const [a, b] = [figureOf(nema.option, name), figureOf(iec.option, name)];
    if (a === null || b === null || a.values[0] === b.values[0]) return [];
    return [{ name, nemaMm: a.values[0], iecMm: b.values[0], difference: a.values[0] - b.values[0] }];
  });
  const left = nema.worst > 0 ? 'IEC' : iec.worst > 0 ? 'NEMA' : 'both';
  return { nema: nameOf(nema.option), iec: nameOf(iec.option), left, differences };
}
