import { lineFacts } from './line-facts';
import { motorOf } from './motor-of';
import type { PlateReading } from './plate-reading';

/** No nameplate is longer. */
const MOST_PLATE_CHARACTERS = 64 * 1024;

/**
 * Reads the text of a nameplate, its lines in any order, into a motor as far as it is told. What was not read is kept
 * as it stood; a figure that could be two things is a problem naming both and stays out of the motor.
 */
export function readPlate(text: string): PlateReading {
  if (text.replace(/^\uFEFF/, '').trim() === '') return refused('is empty: must be the text of a nameplate');
  if (text.length > MOST_PLATE_CHARACTERS) return refused('is longer than 64 kB: no nameplate is');
  const { facts, unread, problems } = lineFacts(text);
  const read = motorOf(facts);
  return { motor: read.motor, unread: [...unread, ...read.unread], problems: [...problems, ...read.problems] };
}

const refused = (says: string): PlateReading => ({
  motor: {},
  unread: [],
  problems: [{ path: '(whole)', value: null, says }],
});
