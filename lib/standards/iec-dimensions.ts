import type { Dimension, DimensionName, FrameDimensions, Holding } from './dimension';
import { standardDimension, unknownDimension, unknownDimensions } from './dimension-of';
import type { IecFrameName } from './frame-text';
import { iecFace } from './iec-face';
import type { Mounting } from './mounting-code';
import { shaftFit } from './shaft-fit';
import type { Cell } from './table';
import { type IecFootFramesRow, iecFootFrames } from './tables/iec-foot-frames';
import { iecShaftHeight } from './tables/iec-shaft-height';

type Some = Partial<Record<DimensionName, Dimension>>;

const FEET = 'IEC 60072-1 foot dimensions';
const SHAFT = 'EN 50347 shaft end';

/** The mounting of an IEC frame. Only the mounting code tells feet and flange; only the poles tell the shaft from 225 up. */
export function iecDimensions(name: IecFrameName, mounting: Mounting | null, poles: number | null): FrameDimensions {
  const rows = iecFootFrames.rows.filter((row) => row.height === name.height);
  const [first] = rows;
  const holding = iecHolding(name, mounting);
  const ends = first
    ? first.shafts.filter((end) => fitsPoles(end, poles) && (name.shaftMm ?? end.D[0]) === end.D[0])
    : [];
  const isTaper = mounting?.isTaper === true;
  const [end] = ends;
  const feet = mounting?.hasSpecialFeet ? {} : feetOf(name, rows, holding.feet);
  return {
    frame: name.frame,
    system: 'IEC',
    dimensions: { ...unknownDimensions(), ...feet, ...(isTaper ? {} : shaftOf(ends, name)) },
    face: iecFace(name, mounting),
    holding,
    shaft: isTaper ? 'taper' : 'plain',
    shaftFit: end && !isTaper && ends.every((one) => one.fit[0] === end.fit[0]) ? end.fit[0] : null,
  };
}

type ShaftEnd = IecFootFramesRow['shafts'][number];

const fitsPoles = ({ poles: of }: ShaftEnd, poles: number | null): boolean =>
  of === 'all' || poles === null || (of === '2') === (poles === 2);

function iecHolding(name: IecFrameName, mounting: Mounting | null): Holding {
  const face = name.flange !== null ? true : (mounting?.hasFace ?? null);
  if (mounting === null) return { feet: null, face, shaft: null, positions: [] };
  return { feet: mounting.feet, face, shaft: mounting.shaft, positions: mounting.positions };
}

/**
 * The feet. A motor without feet keeps the height its frame number stands for (outlines need it) but offers no holes.
 * A, C and K belong to the height; B to the length letter, unknown while the letter is.
 */
function feetOf(name: IecFrameName, rows: readonly IecFootFramesRow[], hasFeet: boolean | null): Some {
  const told = rows.filter((row) => row.length === null || name.lengths.includes(row.length));
  const [row = rows.find(({ isUsual }) => isUsual), ...others] = told;
  if (!row) return {};
  const mm = (cell: Cell, extra: object = {}): Dimension =>
    standardDimension({ mm: cell[0], texts: cell[1], clause: FEET, ...extra });
  const limits = iecShaftHeight.rows.find(({ to }) => to === null || name.height <= to)?.deviations[0];
  const shaftHeightMm = mm(row.H, limits ? { plus: limits[0], minus: -limits[1] } : {});
  if (hasFeet === false) return { shaftHeightMm };
  const lengths = rows.filter(({ isUsual }) => isUsual).map((one) => `${one.frame} ${one.B[0]}`);
  return {
    shaftHeightMm,
    holesAcrossMm: mm(row.A),
    holesAlongMm:
      told.length === 0
        ? unknownDimension(`the foot length is not told: ${lengths.join(', ')} mm`)
        : mm(row.B, { alternatives: others.map((one) => one.B[0]) }),
    footHoleMm: mm(row.K),
    holeToShoulderMm: mm(row.C),
  };
}

/** What all shaft ends the poles leave open agree on; the rest is unknown. */
function shaftOf(ends: readonly ShaftEnd[], name: IecFrameName): Some {
  const [end] = ends;
  if (!end) return {};
  const agreed = (of: 'D' | 'E' | 'F', extra: object = {}): Dimension => {
    if (ends.some((one) => one[of][0] !== end[of][0])) {
      const each = ends.map((one) => `${one[of][0]} mm with ${one.poles} poles`);
      return unknownDimension(`frame ${name.frame} has ${each.join(', ')}: tell the poles`);
    }
    const [weakest = end] = ends.toSorted((a, b) => a[of][1] - b[of][1]);
    return standardDimension({ mm: end[of][0], texts: weakest[of][1], clause: SHAFT, ...extra });
  };
  const fit = shaftFit(end.fit[0], end.D[0]);
  return {
    shaftDiameterMm: agreed('D', fit ? { plus: fit.plus, minus: fit.minus } : {}),
    shaftLengthMm: agreed('E'),
    keyWidthMm: agreed('F'),
  };
}
