import type { Fit } from '@/lib/matching/alike/kept-shares';
import { VERDICTS } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { Cover, SetCover } from './cover';

/** How many shelf motors could go into a set, by verdict; each motor of a kind counts. */
export type Counts = Record<Fit['verdict'], number>;

export interface SetStanding {
  counts: Counts;
  /** All of them. */
  all: number;
  /** The motor that goes in best: by verdict, then by hours; null: none. */
  best: { motor: Motor; fit: Fit } | null;
}

export function setStanding({ kinds }: Pick<Cover, 'kinds'>, { serves }: Pick<SetCover, 'serves'>): SetStanding {
  const counts: Counts = { 'straight-swap': 0, 'swap-with-work': 0, 'check-first': 0 };
  let all = 0;
  let best: SetStanding['best'] = null;
  for (const { kind, fit } of serves) {
    const members = kinds.get(kind) ?? [];
    const [motor] = members;
    if (motor === undefined) continue;
    counts[fit.verdict] += members.length;
    all += members.length;
    if (best === null || isBetter({ motor, fit }, best)) best = { motor, fit };
  }
  return { counts, all, best };
}

function isBetter(a: NonNullable<SetStanding['best']>, b: NonNullable<SetStanding['best']>): boolean {
  const verdict = VERDICTS.indexOf(a.fit.verdict) - VERDICTS.indexOf(b.fit.verdict);
  if (verdict !== 0) return verdict < 0;
  return a.fit.hours !== b.fit.hours ? a.fit.hours < b.fit.hours : a.motor.id < b.motor.id;
}

/** none: nothing could go in; unsure: whatever could must be checked first; one: a single motor could. */
export const COVER_STATES = ['none', 'unsure', 'one'] as const;
export type CoverState = (typeof COVER_STATES)[number];

export function isInState({ counts, all }: Pick<SetStanding, 'counts' | 'all'>, state: CoverState): boolean {
  switch (state) {
    case 'none':
      return all === 0;
    case 'unsure':
      return all > 0 && counts['check-first'] === all;
    case 'one':
      return all === 1;
  }
}
