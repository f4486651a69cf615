import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/**
 * Is the motor held as the set says: by feet, by a face, by both? Not asked where frame and code leave it open, nor of a
 * motor held in another way (IM B30 by pads): a set has no word for it.
 */
export function held(set: PumpSet, motor: Motor | null): Doubt | null {
  if (motor === null) return null;
  const { feet, face } = motorDimensions(motor).holding;
  const lacks = [
    ...(set.mounting !== 'face' && feet === false && face === true ? ['feet'] : []),
    ...(set.mounting !== 'foot' && face === false && feet === true ? ['face'] : []),
  ];
  if (lacks.length === 0) return null;
  const has = feet === true ? 'foot' : 'face';
  return {
    rule: 'held',
    thing: 'set',
    grade: 'wrong',
    field: 'mounting',
    have: set.mounting,
    expected: has,
    unit: null,
    says: `The set holds its motor by ${WORDS[set.mounting]}; ${motor.id}${plateOf(motor)} has no ${lacks.join(' and no ')}.`,
    cite: 'NEMA MG 1-2016 4.2.2, IEC 60034-7: letters of the frame and mounting code',
    figures: figuresOf({ mounting: set.mounting, frame: motor.frame, code: motor.mounting }),
  };
}

const WORDS = { foot: 'its feet', face: 'its face', 'foot-and-face': 'feet and face' } as const;
const plateOf = ({ frame, mounting }: Motor) => ` (${[frame, mounting].filter((one) => one !== null).join(', ')})`;
