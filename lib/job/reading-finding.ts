import type { Grade } from '@/lib/matching/finding';

/** What a reading can be about, in the order of the steps. */
export const ABOUTS = [
  'insulation',
  'rotation',
  'overload',
  'soft-foot',
  'offset',
  'gap',
  'running-current',
  'current-unbalance',
] as const;
export type About = (typeof ABOUTS)[number];

export const ABOUT_WORDS: Readonly<Record<About, string>> = {
  insulation: 'Insulation resistance',
  rotation: 'Rotation',
  overload: 'Overload setting',
  'soft-foot': 'Soft foot',
  offset: 'Offset of the shafts',
  gap: 'Angle of the shafts',
  'running-current': 'Running current',
  'current-unbalance': 'Current unbalance',
};

/**
 * What a reading says: a finding as the judgement makes them, about a reading and not a criterion. `have` was read,
 * `need` is what it is held against, null where that is not known: then it is a check that says why.
 */
export interface ReadingFinding {
  about: About;
  grade: Exclude<Grade, 'work'>;
  have: number | string;
  need: number | string | null;
  unit: string | null;
  /** have − need in `unit`; null where either is no number. */
  difference: number | null;
  says: string;
  cite: string;
}

type Compared = Pick<ReadingFinding, 'about' | 'have' | 'need' | 'unit' | 'cite'>;

export function found(grade: ReadingFinding['grade'], compared: Compared, says: string): ReadingFinding {
  const { about, have, need, unit, cite } = compared;
  const difference = typeof have === 'number' && typeof need === 'number' ? tidy(have - need) : null;
  return { about, grade, have: typeof have === 'number' ? tidy(have) : have, need, unit, difference, says, cite };
}

/** Clears binary dust. */
const tidy = (value: number) => Math.round(value * 1e6) / 1e6;

/** True of what somebody must act on: out of bounds, not merely impossible to judge. */
export const isRaised = ({ grade, need }: ReadingFinding): boolean =>
  grade === 'block' || (grade === 'check' && need !== null);
