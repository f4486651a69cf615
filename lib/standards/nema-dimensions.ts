import type { Dimension, DimensionName, FrameDimensions, Holding, ShaftKind } from './dimension';
import { mmOfPrinted, standardDimension, unknownDimension, unknownDimensions } from './dimension-of';
import type { NemaFrameName } from './frame-text';
import type { Mounting } from './mounting-code';
import { clauseOfFace, nemaFace, nemaFaceRow } from './nema-face';
import { nemaFeet, nemaFootFrame } from './nema-foot-frame';
import {
  acrossTolerance,
  alongTolerance,
  footHoleTolerance,
  heightTolerance,
  shaftTolerance,
  shoulderTolerance,
} from './nema-tolerance';
import { type Cell, citeOf, type Limits } from './table';

/** The mounting of a NEMA frame. Y leaves feet and face unknown, Z the shaft. */
export function nemaDimensions(name: NemaFrameName, mounting: Mounting | null): FrameDimensions {
  const holding = nemaHolding(name, mounting);
  const hasOwnFeet = name.hasSpecialMounting || mounting?.hasSpecialFeet === true;
  return {
    frame: name.frame,
    system: 'NEMA',
    dimensions: {
      ...unknownDimensions(),
      ...(hasOwnFeet ? unknownFeet(name) : feetOf(name, holding.feet)),
      ...shaftOf(name, mounting),
    },
    face: nemaFace(name),
    holding,
    shaft: shaftKindOf(name, mounting),
    shaftFit: null,
  };
}

const isVerticalBase = (name: NemaFrameName): boolean =>
  name.face !== null && !['C', 'CH', 'D', 'JM', 'JP'].includes(name.face);

function nemaHolding(name: NemaFrameName, mounting: Mounting | null): Holding {
  const hasFace = name.face !== null || name.isJetPump;
  const isBase = isVerticalBase(name);
  // A plain frame number is a footed motor; a face motor is sold with and without feet and the number does not tell.
  const feet = isBase ? false : (mounting?.feet ?? (hasFace || name.hasSpecialMounting ? null : true));
  const face = hasFace ? true : (mounting?.hasFace ?? (name.hasSpecialMounting ? null : false));
  if (isBase) return { feet, face, shaft: 'down', positions: ['down'] };
  if (mounting?.shaft) return { feet, face, shaft: mounting.shaft, positions: mounting.positions };
  // V: vertical only; which way the shaft points is not in the letter.
  if (name.isVertical) return { feet, face, shaft: null, positions: [] };
  return { feet, face, shaft: null, positions: mounting?.positions ?? ['horizontal'] };
}

function shaftKindOf(name: NemaFrameName, mounting: Mounting | null): ShaftKind {
  if (name.hasSpecialShaft) return 'special';
  if (name.isTaper || mounting?.isTaper) return 'taper';
  if (name.isJetPump) return 'J';
  if (name.face === 'JM' || name.face === 'JP') return name.face;
  if (name.face === 'P' || name.face === 'PH') return 'hollow';
  if (isVerticalBase(name)) return 'solid-vertical';
  return name.isShort ? 'short' : 'plain';
}

type Some = Partial<Record<DimensionName, Dimension>>;

function unknownFeet(name: NemaFrameName): Some {
  const void_ = unknownDimension(
    name.hasSpecialMounting ? `${name.frame}: special mounting, see the maker's drawing (NEMA MG 1-2016 4.2.2)` : null,
  );
  return {
    shaftHeightMm: void_,
    holesAcrossMm: void_,
    holesAlongMm: void_,
    footHoleMm: void_,
    holeToShoulderMm: void_,
  };
}

const CLAUSE = {
  small: 'NEMA MG 1-2016 4.4.1',
  T: 'NEMA MG 1-2016 4.4.1',
  U: 'NEMA MG 1, superseded 1952 series',
  original: 'NEMA MG 1, superseded pre-1952 frames',
} as const;

/**
 * The feet. A motor without feet keeps the height its number stands for (outlines need it) but offers no holes.
 * A face motor that may or may not have feet (null) shows the holes it would have.
 */
function feetOf(name: NemaFrameName, hasFeet: boolean | null): Some {
  const [number = 0, other] = name.numbers;
  const feet = nemaFeet(number, name);
  if (feet === null) return {};
  const clause = CLAUSE[name.generation];
  const inches = (cell: Cell, extra: object = {}): Dimension =>
    standardDimension({ mm: mmOfPrinted(cell[0]), texts: cell[1], clause, ...extra });
  const shaftHeightMm = inches(feet.D, heightTolerance());
  if (hasFeet === false) return { shaftHeightMm };

  const otherFeet = other === undefined ? null : nemaFeet(other, name);
  const also = nemaFootFrame(name)?.twoFAlso;
  const alternatives = otherFeet ? [mmOfPrinted(otherFeet.twoF[0])] : also === undefined ? [] : [mmOfPrinted(also)];
  const some: Some = {
    shaftHeightMm,
    holesAlongMm: inches(feet.twoF, { ...alongTolerance(number), alternatives }),
    holeToShoulderMm: holeToShoulder(name, inches),
  };
  if (feet.E) {
    const across = [feet.E[0] * 2, feet.E[1], feet.E[2]] as const;
    some.holesAcrossMm = inches(across, acrossTolerance(number) ?? {});
  }
  if (feet.H) some.footHoleMm = inches(feet.H, footHoleTolerance(number) ?? {});
  return some;
}

/** From this series up a footed face motor has the BA of the plain foot motor (MG 1 4.4.4 against 4.4.1). */
const SAME_BA_FROM = 280;

function holeToShoulder(name: NemaFrameName, inches: (cell: Cell, extra?: object) => Dimension): Dimension {
  const [number = 0] = name.numbers;
  const foot = nemaFootFrame(name) ?? nemaFootFrame({ ...name, isShort: false });
  if (name.face === 'JM' || name.face === 'JP')
    return unknownDimension(`${name.frame}: no table read gives the foot holes of a ${name.face} motor from its shaft`);
  if (name.face !== null || name.isJetPump) {
    const own = nemaFaceRow(name)?.BA;
    if (own)
      return standardDimension({
        mm: mmOfPrinted(own[0]),
        texts: own[1],
        clause: 'NEMA MG 1-2016 4.4.4, footed C face',
        ...shoulderTolerance(),
      });
    if (number < SAME_BA_FROM) return unknownDimension(`${name.frame}: no table read gives its BA with a face`);
  }
  return foot ? inches(foot.BA, shoulderTolerance()) : unknownDimension();
}

function shaftOf(name: NemaFrameName, mounting: Mounting | null): Some {
  const kind = shaftKindOf(name, mounting);
  switch (kind) {
    case 'special':
      return noShaft(`${name.frame}: special shaft, see the maker's drawing (NEMA MG 1-2016 4.2.2)`);
    case 'taper':
      return noShaft('tapered shaft: no figures here');
    case 'J':
      return noShaft('threaded jet-pump shaft: no figures here');
    case 'hollow':
      return noShaft('hollow shaft: the bore is not in the frame');
    case 'JM':
    case 'JP':
    case 'solid-vertical':
      return pumpShaft(name);
    case 'plain':
    case 'short':
      return plainShaft(name);
  }
}

function noShaft(why: string): Some {
  const none = unknownDimension(why);
  return { shaftDiameterMm: none, shaftLengthMm: none, keyWidthMm: none };
}

function plainShaft(name: NemaFrameName): Some {
  const row = nemaFootFrame(name);
  if (row === null) return noShaft(`no table read lists the shaft of ${name.frame}`);
  const clause = CLAUSE[row.generation];
  const inches = (cell: Cell, extra: object = {}): Dimension =>
    standardDimension({ mm: mmOfPrinted(cell[0]), texts: cell[1], clause, ...extra });
  const [key, texts, src] = row.S;
  return {
    shaftDiameterMm: inches(row.U, shaftTolerance(row.U[0])),
    shaftLengthMm: inches(row.NW),
    keyWidthMm:
      key === 'flat' ? unknownDimension(`a flat, no key: ${citeOf(clause, texts)}`) : inches([key, texts, src]),
  };
}

/** A pump shaft, with the limits printed for it; its length is counted from the face. */
function pumpShaft(name: NemaFrameName): Some {
  const row = nemaFaceRow(name);
  if (row === null) return noShaft(`no table read lists the shaft of ${name.frame}`);
  const clause = clauseOfFace(row);
  const limited = (cell: Cell<number | Limits | 'flat'> | undefined, at: 'max' | 'middle' | 'min'): Dimension => {
    if (cell === undefined || cell[0] === 'flat') return unknownDimension();
    const [printed, texts] = cell;
    const [max, min] = typeof printed === 'number' ? [printed, printed] : printed;
    const nominal = at === 'max' ? max : at === 'min' ? min : (max + min) / 2;
    const limits = max === min ? {} : { plus: mmOfPrinted(max - nominal), minus: mmOfPrinted(nominal - min) };
    return standardDimension({ mm: mmOfPrinted(nominal), texts, clause, ...limits });
  };
  return {
    shaftDiameterMm: limited(row.U, 'max'),
    shaftLengthMm: limited(row.AH, 'middle'),
    keyWidthMm: limited(row.S, 'min'),
  };
}
