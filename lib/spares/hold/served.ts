import { judgeAlike } from '@/lib/matching/alike/judge-alike';
import type { Fit } from '@/lib/matching/alike/kept-shares';
import type { JudgedBy } from '@/lib/matching/context';
import { spareState } from '@/lib/matching/spare-state';
import type { PumpSet } from '@/lib/plant/set';
import type { HoldCandidate } from './candidate';

/** One candidate that could go into a set, by the whole judgement. */
export interface Served extends Fit {
  /** Which of the candidates. */
  candidate: number;
}

/** For one set, every candidate that could go in. */
export type Serving = (set: PumpSet) => Served[];

/** The judgement of the same candidates for many sets; kept as long as they and the settings hold. */
export function servingOf(candidates: readonly HoldCandidate[], { settings, asOf }: JudgedBy): Serving {
  const judge = judgeAlike(settings);
  const placed = candidates.map(({ motor }, candidate) => {
    const testHours = spareState(motor, asOf).test === null ? 0 : settings.hours['spare-test'];
    return { ...judge.ofMotor(motor), candidate, testHours };
  });
  const fits = judge.fitsOf(placed);
  return (set) => {
    const served: Served[] = [];
    fits(judge.ofSet(set), ({ candidate, testHours }, fit) => {
      served.push({ ...fit, candidate, hours: Math.round((fit.hours + testHours) * 100) / 100 });
    });
    return served;
  };
}
