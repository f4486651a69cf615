import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Dimension, DimensionName } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';
import type { Line } from '../demand';
import { quantity } from '../quantity';
import { bearingText, faceText, holesText, hubText, withTolerance } from './mount-texts';

const NO_FIGURE = 'no standard fixes it for this frame';
const dimension = (asked: Motor, name: DimensionName): Dimension => motorDimensions(asked).dimensions[name];
const citeOf = (asked: Motor, name: DimensionName) => dimension(asked, name).cite ?? NO_FIGURE;
const hasFeet = (_: Motor, { mounting }: PumpSet) => mounting !== 'face';
const hasFace = (_: Motor, { mounting }: PumpSet) => mounting !== 'foot';

/** How it is held and coupled. Lengths in mm. */
export const MOUNT_LINES: readonly Line[] = [
  {
    ...{ id: 'frame', label: 'Frame', criterion: 'mounting', of: 'asked' },
    value: ({ frame }) => frame,
    why: 'the frame that the standard assigns to the rating, with the suffixes the place asks for',
  },
  {
    ...{ id: 'mounting', label: 'Mounting', criterion: 'mounting', of: 'asked' },
    value: ({ mounting }, set) => mounting ?? (set.mounting === 'foot' ? 'feet' : null),
    why: 'how the set holds it; codes by IEC 60034-7',
  },
  {
    ...{ id: 'position', label: 'Position', criterion: 'mounting', of: 'each' },
    value: (_, { shaftDirection }) => (shaftDirection === null ? null : DIRECTION[shaftDirection]),
    why: 'grease, drains and bearings are made for it',
  },
  {
    ...{ id: 'shaft-height', label: 'Shaft height', criterion: 'shaft-height', of: 'asked', isAsked: hasFeet },
    value: (asked) => withTolerance(dimension(asked, 'shaftHeightMm'), 2),
    why: (asked) => citeOf(asked, 'shaftHeightMm'),
  },
  {
    ...{
      id: 'foot-holes',
      label: 'Foot holes, across and along',
      criterion: 'foot-holes',
      of: 'asked',
      isAsked: hasFeet,
    },
    value: (asked) => holesText(asked),
    why: (asked) => citeOf(asked, 'holesAcrossMm'),
  },
  {
    ...{
      id: 'hole-to-shoulder',
      label: 'Holes to shaft shoulder',
      criterion: 'shaft-position',
      of: 'asked',
      isAsked: hasFeet,
    },
    value: (asked) => quantity(dimension(asked, 'holeToShoulderMm').value, 'mm', 2),
    why: (asked) => citeOf(asked, 'holeToShoulderMm'),
  },
  {
    ...{ id: 'shaft', label: 'Shaft, diameter', criterion: 'shaft-diameter', of: 'asked' },
    value: (asked) => {
      const { shaftFit } = motorDimensions(asked);
      const diameter = dimension(asked, 'shaftDiameterMm');
      return shaftFit === null || diameter.value === null
        ? withTolerance(diameter, 3)
        : `${figure(diameter.value, 3)} mm ${shaftFit}`;
    },
    why: (asked) => citeOf(asked, 'shaftDiameterMm'),
  },
  {
    ...{ id: 'shaft-length', label: 'Shaft, length from the shoulder', criterion: 'shaft-length', of: 'asked' },
    value: (asked) => quantity(dimension(asked, 'shaftLengthMm').value, 'mm', 2),
    why: (asked) => citeOf(asked, 'shaftLengthMm'),
  },
  {
    ...{ id: 'key', label: 'Key, width', criterion: 'key', of: 'asked' },
    value: (asked) => quantity(dimension(asked, 'keyWidthMm').value, 'mm', 3),
    why: (asked) => `${citeOf(asked, 'keyWidthMm')}; delivered with its key`,
  },
  {
    ...{ id: 'hub', label: 'Carries', criterion: 'shaft-diameter', of: 'each' },
    value: (_, set) => hubText(set),
    why: 'what is on the pump’s side: the hub or bushing may be changed, the judgement says so',
  },
  {
    ...{ id: 'face', label: 'Face', criterion: 'face', of: 'asked', isAsked: hasFace },
    value: (asked) => faceText(motorDimensions(asked).face),
    why: (asked) => motorDimensions(asked).face?.cite ?? 'the face that gear or pump offers',
  },
  {
    ...{ id: 'bearings', label: 'Drive-end bearing', criterion: 'bearings', of: 'each' },
    value: (asked, set) => bearingText(asked, set),
    why: (_, { coupling }) =>
      coupling.type === 'belt'
        ? 'least sheave: NEMA MG 1-14.42'
        : 'a roller bearing runs too lightly loaded on a coupling',
  },
  {
    ...{ id: 'terminal-box', label: 'Terminal box', criterion: 'terminal-box', of: 'asked' },
    value: ({ terminalBox }) => (terminalBox === null ? null : BOX[terminalBox]),
    why: 'where the cable comes in, seen from the drive end, feet down',
  },
  {
    ...{ id: 'rotation', label: 'Rotation', criterion: 'rotation', of: 'each' },
    value: (_, { rotation }) => (rotation === null ? null : ROTATION[rotation]),
    why: 'seen from the drive end; a fan that turns one way only is to be stated',
  },
  {
    ...{ id: 'length', label: 'Length overall, at most', criterion: 'envelope', of: 'asked' },
    value: ({ lengthMm }) => quantity(lengthMm, 'mm', 0),
    why: 'the room at the set; a frame does not fix it',
  },
  {
    ...{ id: 'mass', label: 'Mass, at most', criterion: 'lift', of: 'asked' },
    value: ({ massKg }) => quantity(massKg, 'kg', 0),
    why: 'what the set and its lifting gear carry; a frame does not fix it',
  },
];

const DIRECTION = { horizontal: 'shaft horizontal', down: 'shaft down', up: 'shaft up' } as const;
const BOX = { left: 'left (F-1)', right: 'right (F-2)', top: 'top (F-3)' } as const;
const ROTATION = { cw: 'clockwise', ccw: 'anticlockwise', either: 'either way' } as const;
