import type { PlateMotor, RatingInput } from '@/lib/nameplate/plate-reading';

/** The text of a plate and exactly what it says; what is left out is nothing. */
export interface StampedPlate {
  name: string;
  text: string;
  motor: Omit<PlateMotor, 'ratings'>;
  ratings?: RatingInput[];
  unread?: string[];
  /** The paths of the problems, in alphabetical order. */
  problems?: string[];
}
