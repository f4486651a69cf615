import { type PartReading, partOf, problemAt } from '../part-reading';

/** A declared washdown duty, and what the motor is made of. */
export function washdown(text: string): PartReading {
  if (/STAINLESS/i.test(text)) return partOf({ washdown: 'stainless' });
  if (/PAINTED|WHITE/i.test(text)) return partOf({ washdown: 'painted' });
  return problemAt('washdown', text, 'could be painted or stainless steel: look at the motor');
}
