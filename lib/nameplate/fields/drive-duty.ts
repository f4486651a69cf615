import { type PartReading, partOf } from '../part-reading';

/** "INVERTER DUTY"; NEMA MG 1 part 31 is definite-purpose inverter duty, part 30 general-purpose on a drive. */
export const driveDuty = (text: string): PartReading =>
  partOf({ driveDuty: /PART 30/i.test(text) ? 'general' : 'inverter' });
