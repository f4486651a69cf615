import type { Result } from '@/lib/matching/assess';
import type { Whereabouts as Soonness } from '@/lib/matching/order';
import type { Motor } from '@/lib/plant/motor';
import type { SparableMotor } from '@/lib/register/queries/spare-sets';
import type { Whereabouts } from '@/lib/register/whereabouts';

/** A motor that might go in, and where it would come from. */
export type Candidate =
  | { from: 'shelf'; motor: Motor; at: Whereabouts; condition: string | null; rewinds: number | null }
  | { from: 'set'; motor: Motor; stops: SparableMotor['stops'] }
  | { from: 'buy'; motor: Motor };

export type Source = Candidate['from'];

export interface JudgedCandidate {
  candidate: Candidate;
  result: Result;
}

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
