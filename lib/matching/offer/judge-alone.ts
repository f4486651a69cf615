import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { assess, type Result } from '../assess';
import { type Candidate, soonnessOf } from './candidate';

/** The candidate judged alone. `asOf`: the day as YYYY-MM-DD. */
export function judgeAlone(candidate: Candidate, set: PumpSet, settings: SiteSettings, asOf: string): Result {
  const { motor } = candidate;
  const { results } = assess(
    { set, candidates: [motor], asOf },
    settings,
    new Map([[motor.id, soonnessOf(candidate)]]),
  );
  const [result] = results;
  if (result === undefined) throw new Error(`The judgement answered nothing for ${motor.id}`);
  return result;
}
