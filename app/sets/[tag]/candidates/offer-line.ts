import type { CandidateRowProps } from '@/app/look/candidate-row';
import type { Result } from '@/lib/matching/assess';
import type { Candidate, JudgedCandidate } from '@/lib/matching/offer/candidate';
import { figure } from '@/lib/units/figure';
import { deciding } from './deciding';

/** A candidate without its plate: where it would come from. */
export type ComesFrom = Candidate extends infer One ? (One extends Candidate ? Omit<One, 'motor'> : never) : never;

/** What a row of the list tells of a candidate, as values alone: a phone's worker makes it and its page draws it. */
export interface OfferLine extends Omit<CandidateRowProps, 'href' | 'where' | 'why'> {
  why: string | null;
  from: ComesFrom;
}

/** A row shows this many of the findings that decide. */
const REASONS_SHOWN = 2;

export function offerLine({ candidate, result }: JudgedCandidate): OfferLine {
  const isUnsuitable = result.verdict === 'unsuitable';
  const { motor, ...from } = candidate;
  return {
    name: result.id,
    verdict: result.verdict,
    hours: isUnsuitable ? null : result.hours,
    frame: candidate.from === 'buy' ? null : motor.frame,
    reasons: deciding(result.findings).slice(0, REASONS_SHOWN),
    facts: isUnsuitable ? [] : pointFacts(result),
    why: isUnsuitable && !result.why.startsWith('Not offered') ? null : result.why,
    from,
  };
}

/** The operating point in short. What is not known is left out. */
function pointFacts({ operatingPoint: { motorKw, pumpRpm, loadPct, amps } }: Result): string[] {
  return [
    pumpRpm === null ? null : `pump ${figure(pumpRpm, 0)} rpm`,
    motorKw === null ? null : `${figure(motorKw)} kW`,
    loadPct === null ? null : `load ${figure(loadPct, 0)} %`,
    amps === null ? null : `${figure(amps, 1)} A`,
  ].filter((fact) => fact !== null);
}
