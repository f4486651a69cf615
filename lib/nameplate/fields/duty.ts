import type { PartReading } from '../part-reading';
import { problemAt } from '../part-reading';
import { letters } from './letters';

/** "S1", "CONT", "S3 40%". A time such as "30 MIN" is S2 with its time, which a duty type does not carry. */
export function duty(text: string): PartReading {
  if (/^CONT/i.test(text)) return letters('duty', 'S1', text);
  const [whole, type] = /^S ?(\d{1,2})/i.exec(text) ?? [];
  if (whole !== undefined) {
    const read = letters('duty', `S${type}`, text);
    if (!read.ok || whole.length === text.length) return read;
    return { ...read, doubts: [{ path: 'duty', value: text, says: `is read as S${type}: how long is for a person` }] };
  }
  return problemAt('duty', text, 'is not a duty type: S1 to S10, or CONT for S1');
}
