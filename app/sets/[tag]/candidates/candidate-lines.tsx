import { CandidateList, CandidateRow } from '@/app/look/candidate-row';
import { Tag } from '@/app/look/tag';
import { candidatePath } from '@/app/paths';
import { WhereaboutsText } from '@/app/whereabouts-text';
import type { ComesFrom, OfferLine } from './offer-line';

/** Candidates as rows, each a link to its page. */
export function CandidateLines({ tag, lines }: { tag: string; lines: readonly OfferLine[] }) {
  return (
    <CandidateList>
      {lines.map((line) => (
        <CandidateLine key={line.name} tag={tag} line={line} />
      ))}
    </CandidateList>
  );
}

export function CandidateLine({ tag, line: { from, ...row } }: { tag: string; line: OfferLine }) {
  return <CandidateRow {...row} href={candidatePath(tag, row.name)} where={<Where candidate={from} />} />;
}

/** Where to walk to, or what stops for it. */
export function Where({ candidate }: { candidate: ComesFrom }) {
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
