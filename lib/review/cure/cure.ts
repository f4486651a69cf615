import type { Verdict } from '@/lib/matching/verdict';
import type { PumpSet } from '@/lib/plant/set';

/** What would put a finding right. Each was judged by the engine again and raises the finding no more. */
export type Cure =
  | {
      kind: 'shelf' | 'buy';
      /** Plant number of the motor on a shelf; of one to buy the rating it is asked for by. */
      motor: string;
      verdict: Verdict;
      hours: number;
      /** How it would run, such as "loaded to 62 %"; null: not known. */
      runs: string | null;
    }
  | { kind: 'work'; what: string /** Null: no site can say beforehand. */; hours: number | null }
  /** A reading comes first: what would put it right is not known before. */
  | { kind: 'look'; reading: string };

export interface Cured {
  /** At most one of each kind: work, then from a shelf, then to buy. */
  cures: Cure[];
  /** Why there is none; null where there is. */
  why: string | null;
}

/** Work at the set, and the set as it would then be. */
export interface Change {
  what: string;
  hours: number | null;
  set: PumpSet;
}
