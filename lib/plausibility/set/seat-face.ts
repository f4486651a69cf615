import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/** Is the face the set offers the motor's face? Pitch circles in mm. Not asked where either is not known. */
export function seatFace({ seat }: PumpSet, motor: Motor | null): Doubt | null {
  if (seat.face === null || motor === null) return null;
  const offered = dimensionsOf(seat.face).face;
  const { face, holding } = motorDimensions(motor);
  const about = {
    rule: 'seat-face',
    thing: 'set',
    field: 'seat.face',
    have: seat.face,
    unit: null,
    figures: figuresOf({
      face: seat.face,
      frame: motor.frame,
      mounting: motor.mounting,
      circle: motor.measured.pitchCircleMm,
    }),
  } as const;
  if (holding.face === false)
    return {
      ...about,
      grade: 'wrong',
      expected: null,
      says: `The set offers face ${seat.face}; ${motor.id} in it has none.`,
      cite: 'NEMA MG 1-2016 4.2.2, IEC 60034-7: letters of the frame and mounting code',
    };
  if (offered === null || face === null) return null;
  const [set, own] = [offered.pitchCircleMm, face.pitchCircleMm];
  if (set === null || own === null || Math.abs(set - own) <= SAME_MM) return null;
  return {
    ...about,
    grade: 'wrong',
    expected: face.name,
    says: `${offered.name} has its bolts on ${figure(set)} mm, ${face.name} of ${motor.id} on ${figure(own)} mm: ${figure(Math.abs(set - own))} mm apart.`,
    cite: `${offered.cite}; ${face.cite}`,
  };
}

const SAME_MM = 1;
