import type { Motor } from '@/lib/plant/motor';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import type { Result } from '../assess';
import type { Whereabouts as Soonness } from '../order';

/** A set that would stand still when its motor is taken. */
export interface Stops {
  setId: string;
  tag: string;
  service: string | null;
  /** 1 stops the plant ... 4 can wait. */
  criticality: number;
}

/** A motor that might go in, and where it would come from. */
export type Candidate =
  | { from: 'shelf'; motor: Motor; at: Whereabouts; condition: string | null; rewinds: number | null }
  | { from: 'set'; motor: Motor; stops: Stops }
  | { from: 'buy'; motor: Motor };

export type Source = Candidate['from'];

export interface JudgedCandidate {
  candidate: Candidate;
  result: Result;
}

/** Why a motor of the site cannot be taken for a set. */
export type Unoffered = 'in-this-set' | 'in-critical-set' | 'at-repair' | 'scrapped';

/** How soon a candidate is in hand, as the order of the list asks it. */
export function soonnessOf(candidate: Candidate): Soonness {
  switch (candidate.from) {
    case 'shelf':
      return candidate.at.place === 'on-order' ? 'on-order' : 'same-store';
    case 'set':
      return 'other-set';
    case 'buy':
      return 'to-buy';
  }
}

/**
 * Whether a set may be asked to give its motor to another. What is not known to be less critical is not taken from.
 * Criticality: 1 stops the plant ... 4 can wait; null: nobody said.
 */
export const isSparable = (asking: number | null, standing: number | null): standing is number =>
  asking !== null && standing !== null && standing > asking;
