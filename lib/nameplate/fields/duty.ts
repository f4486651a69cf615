import type { PartReading } from '../part-reading';
import { problemAt } from '../part-reading';
import { letters } from './letters';

/** "S1", "CONT", "S3 40%". A time such as "30 MIN" is S2 with its time, which a duty type does not carry. */
export function duty(text: string): PartReading {
  if (/^CONT/i.test(text)) return letters('duty', 'S1', text);
  const type = /^S ?(\d{1,2})/i.exec(text)?.[1];
  if (type !== undefined) return letters('duty', `S${type}`, text);
  return problemAt('duty', text, 'is not a duty type: S1 to S10, or CONT for S1');
}
