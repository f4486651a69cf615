import type { MotorInput } from '@/lib/plant/motor';
import type { Problem } from '@/lib/plant/reading';

export type RatingInput = NonNullable<MotorInput['ratings']>[number];
/** As far as it was read. A plate does not tell the plant number, so there is no id. */
export type PlateMotor = Omit<MotorInput, 'id'>;

export interface PlateReading {
  motor: PlateMotor;
  unread: string[];
  problems: Problem[];
}
