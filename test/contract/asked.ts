import { type Assessment, assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { assessCase } from '@/lib/plant/assess-case';
import { readJson } from '@/lib/plant/read-json';
import type { Problem, Reading } from '@/lib/plant/reading';
import type { Json } from './example';

/** What the command does with the text it was given. */
export function asked(text: string): Reading<Assessment> {
  const reading = readJson(assessCase, text);
  return reading.ok ? { ok: true, value: assess(reading.value, defaultSettings) } : reading;
}

/** The answer to a case that is taken. */
export function answered(whole: Json): Assessment {
  const answer = asked(JSON.stringify(whole));
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.problems)}`);
  return answer.value;
}

/** The problems of a case that is refused. */
export function refused(whole: Json | string): Problem[] {
  const answer = asked(typeof whole === 'string' ? whole : JSON.stringify(whole));
  if (answer.ok) throw new Error('taken, though it should be refused');
  return answer.problems;
}
