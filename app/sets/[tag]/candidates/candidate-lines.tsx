import { CandidateList, CandidateRow } from '@/app/look/candidate-row';
import { Tag } from '@/app/look/tag';
import { candidatePath } from '@/app/paths';
import { WhereaboutsText } from '@/app/whereabouts-text';
import type { Result } from '@/lib/matching/assess';
import type { Candidate, JudgedCandidate } from '@/lib/matching/offer/candidate';
import { figure } from '@/lib/units/figure';
import { deciding } from './deciding';

/** Candidates as rows, each a link to its page. */
export function CandidateLines({ tag, judged }: { tag: string; judged: readonly JudgedCandidate[] }) {
  return (
    <CandidateList>
      {judged.map((one) => (
        <CandidateLine key={one.result.id} tag={tag} one={one} />
      ))}
    </CandidateList>
  );
}

export function CandidateLine({ tag, one: { candidate, result } }: { tag: string; one: JudgedCandidate }) {
  const isUnsuitable = result.verdict === 'unsuitable';
  return (
    <CandidateRow
      href={candidatePath(tag, result.id)}
      name={result.id}
      verdict={result.verdict}
      hours={isUnsuitable ? null : result.hours}
      frame={candidate.from === 'buy' ? null : candidate.motor.frame}
      reasons={deciding(result.findings)}
      where={<Where candidate={candidate} />}
      facts={isUnsuitable ? [] : pointFacts(result)}
      why={isUnsuitable && !result.why.startsWith('Not offered') ? null : result.why}
    />
  );
}

/** Where to walk to, or what stops for it. */
export function Where({ candidate }: { candidate: Candidate }) {
  switch (candidate.from) {
    case 'shelf': {
      const { at, condition, rewinds } = candidate;
      return (
        <>
          <WhereaboutsText at={at} />
          {condition !== null && (
            <>
              , <bdi>{condition}</bdi>
            </>
          )}
          {rewinds !== null && rewinds > 0 && `, rewound ${rewinds === 1 ? 'once' : `${rewinds} times`}`}
        </>
      );
    }
    case 'set': {
      const { tag, service } = candidate.stops;
      return (
        <>
          <b>
            Stops <Tag>{tag}</Tag>
          </b>
          {service !== null && (
            <>
              , <bdi>{service}</bdi>
            </>
          )}
        </>
      );
    }
    case 'buy':
      return <>To buy, by a purchase specification</>;
  }
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
