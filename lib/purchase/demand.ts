import type { CriterionId } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';

/** What one set asks of it; null: nobody has told. */
export interface DemandOfSet {
  tag: string;
  value: string | null;
}

/** One line of a purchase specification. */
export interface Demand {
  /** Stays the same whatever the label says. */
  id: string;
  label: string;
  /** Null: nobody has told, and it is to be told before the order. */
  value: string | null;
  /** Where it comes from, or what the supplier is to confirm. */
  why: string;
  /** The question of the judgement that asks for it; null: it is for the supplier alone. */
  criterion: CriterionId | null;
  /** What each set asks, where they do not all ask the same. */
  bySet: readonly DemandOfSet[];
}

export interface DemandGroup {
  title: string;
  demands: readonly Demand[];
}

/** How a line is made for one set and the motor asked for it, and from there for several. */
export interface Line {
  id: string;
  label: string;
  criterion: CriterionId | null;
  why: string | ((asked: Motor, set: PumpSet) => string);
  /** Null: nobody has told. */
  value: (asked: Motor, set: PumpSet) => string | null;
  /** Of several sets: `asked` takes the one motor's own figure, `each` says what every set has. */
  of: 'asked' | 'each';
  /** Of several sets, the one value that is enough for all of them; null: one of them has not told it. Absent: each value once. */
  strictest?: (sets: readonly PumpSet[]) => string | null;
  /** That `asked` need not be it at all: said only where every set tells so, since an untold one may ask it. */
  isNothing?: (asked: Motor) => boolean;
  /** Absent: always asked. A line that no set asks is left out. */
  isAsked?: (asked: Motor, set: PumpSet) => boolean;
}
