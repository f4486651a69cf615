import { lineFacts } from './line-facts';
import { motorOf } from './motor-of';
import type { PlateReading } from './plate-reading';

/**
 * Reads the text of a nameplate, its lines in any order, into a motor as far as it is told. What was not read is kept
 * as it stood; a figure that could be two things is a problem naming both and stays out of the motor.
 */
export function readPlate(text: string): PlateReading {
  const { facts, unread, problems } = lineFacts(text);
  const read = motorOf(facts);
  return { motor: read.motor, unread: [...unread, ...read.unread], problems: [...problems, ...read.problems] };
}
