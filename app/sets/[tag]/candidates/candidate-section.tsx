import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import { candidatesPath } from '@/app/paths';
import type { Source } from '@/lib/matching/offer/candidate';
import { CandidateLine, CandidateLines } from './candidate-lines';
import type { OfferLine } from './offer-line';

/** What can go in from one source, best first; where nothing can, the nearest miss. */
export function CandidateSection({
  tag,
  source,
  lines,
  count,
  asked,
  nearest,
  isCriticalityTold,
}: {
  tag: string;
  source: Source;
  /** Those to show. */
  lines: readonly OfferLine[];
  /** How many fit. */
  count: number;
  asked: number;
  nearest: OfferLine | null;
  isCriticalityTold: boolean;
}) {
  return (
    <section>
      <SectionHead title={HEADS[source]} aside={asideOf(source, count, asked)} />
      {count > 0 && <CandidateLines tag={tag} lines={lines} />}
      {count === 0 && (
        <p className="pt-3">
          {source === 'set' && !isCriticalityTold
            ? 'Nobody has told how critical this set is, so no other set is asked to stop for it.'
            : source === 'buy' && nearest === null
              ? 'No standard rating answers: the supply, the poles or the power asked is not known well enough.'
              : NOTHING[source]}
          {nearest !== null && ' The nearest miss:'}
        </p>
      )}
      {count === 0 && nearest !== null && (
        <ol className="rank">
          <CandidateLine tag={tag} line={nearest} />
        </ol>
      )}
      {lines.length < count && (
        <p className="pt-2">
          <Link className="to" href={`${candidatesPath(tag)}?from=${source}`}>
            All {count}
          </Link>
        </p>
      )}
    </section>
  );
}

const HEADS: Record<Source, string> = {
  shelf: 'On a shelf or on order',
  set: 'From a less critical set',
  buy: 'To buy',
};
const NOTHING: Record<Source, string> = {
  shelf: 'Nothing on the shelves fits.',
  set: 'No motor of a less critical set fits.',
  buy: 'No standard rating fits.',
};

function asideOf(source: Source, fits: number, asked: number): string {
  switch (source) {
    case 'shelf':
      return `${fits} of ${asked} can go in`;
    case 'set':
      return `${fits} of ${asked}; stops that set`;
    case 'buy':
      return fits === 1 ? '1 standard rating' : `${fits} standard ratings`;
  }
}
