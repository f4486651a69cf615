import { judge } from '@/lib/matching/assess';
import { kindsOf, type MotorKind } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import { spareState } from '@/lib/matching/spare-state';
import type { Verdict } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';

/** A set that a shelf could cover. */
export interface CoveredSet {
  setId: string;
  service: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  set: PumpSet;
}

export interface CoverLost {
  of: Omit<CoveredSet, 'set'> & { tag: string };
  /** How the motor that was taken would have gone in. */
  verdict: Verdict;
  /** How many shelf motors could still go in, counted no further than COUNTED_TO. */
  left: number;
}

/** Whoever has so many left has lost nothing to speak of: more are not looked for. */
export const COUNTED_TO = 3;

/**
 * Which sets could have had this motor from the shelf, and what is left for each: those with none first, then by
 * criticality. Sets with COUNTED_TO and more left are not told. `others` are the motors still on a shelf, without it.
 * `asOf`: the day as YYYY-MM-DD.
 */
export function coverLost(
  taken: Motor,
  sets: readonly CoveredSet[],
  others: readonly Motor[],
  settings: SiteSettings,
  asOf: string,
): CoverLost[] {
  const by = { settings, asOf };
  const takenKind = screenOf(kindsOf([taken]), settings);
  const had = sets.flatMap((of) => {
    if (takenKind(of.set).length === 0) return [];
    const { verdict } = judge(of.set, taken, by);
    return verdict === 'unsuitable' ? [] : [{ of, verdict }];
  });
  if (had.length === 0) return [];
  const offered = others.filter((motor) => spareState(motor, asOf).refused === null);
  const screen = screenOf(kindsOf(offered), settings);
  return had
    .map(({ of: { set, ...of }, verdict }) => ({
      ...{ of: { ...of, tag: set.tag }, verdict },
      left: countOf(screen(set), (one) => judge(set, one, by).verdict !== 'unsuitable'),
    }))
    .filter(({ left }) => left < COUNTED_TO)
    .sort((a, b) => a.left - b.left || rankOf(a.of) - rankOf(b.of) || (a.of.tag < b.of.tag ? -1 : 1));
}

/** The motors of the kinds that fit, up to COUNTED_TO: a kind is judged once for all its motors. */
function countOf(kinds: readonly MotorKind[], fits: (motor: Motor) => boolean): number {
  let count = 0;
  for (const { one, members } of kinds) {
    if (fits(one)) count += members.length;
    if (count >= COUNTED_TO) break;
  }
  return Math.min(count, COUNTED_TO);
}

/** What nobody judged stands last. */
const rankOf = ({ criticality }: Pick<CoveredSet, 'criticality'>) => criticality ?? 5;
