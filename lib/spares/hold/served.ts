import { judgeAlike, type PlacedMotor } from '@/lib/matching/alike/judge-alike';
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
export function servingOf(candidates: readonly HoldCandidate[], judgedBy: JudgedBy): Serving {
  const { placed, serving } = serverOf(judgedBy);
  return serving(candidates.map(placed));
}

interface Placed extends PlacedMotor {
  candidate: number;
  testHours: number;
}

/** The same in two steps: each candidate is placed for itself, then any set is asked of all of them. */
export function serverOf({ settings, asOf }: JudgedBy): {
  placed: (of: HoldCandidate, candidate: number) => Placed;
  serving: (placed: readonly Placed[]) => Serving;
} {
  const judge = judgeAlike(settings);
  return {
    placed: ({ motor }, candidate) => {
      const testHours = spareState(motor, asOf).test === null ? 0 : settings.hours['spare-test'];
      return { ...judge.ofMotor(motor), candidate, testHours };
    },
    serving: (placed) => {
      const fits = judge.fitsOf(placed);
      return (set) => {
        const served: Served[] = [];
        fits(judge.ofSet(set), ({ candidate, testHours }, fit) => {
          served.push({ ...fit, candidate, hours: Math.round((fit.hours + testHours) * 100) / 100 });
        });
        return served;
      };
    },
  };
}
