import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import { candidatesPath } from '@/app/paths';
import type { JudgedCandidate, Source } from '@/lib/matching/offer/candidate';
import { CandidateLine, CandidateLines } from './candidate-lines';

export const SOURCES: readonly Source[] = ['shelf', 'set', 'buy'];

/** What can go in from one source, best first; where nothing can, the nearest miss. */
export function CandidateSection({
  tag,
  source,
  fits,
  asked,
  isWhole,
  nearest,
  isCriticalityTold,
}: {
  tag: string;
  source: Source;
  fits: readonly JudgedCandidate[];
  asked: number;
  isWhole: boolean;
  nearest: JudgedCandidate | null;
  isCriticalityTold: boolean;
}) {
  const shown = isWhole ? fits : fits.slice(0, SHOWN);
  return (
    <section>
      <SectionHead title={HEADS[source]} aside={asideOf(source, fits.length, asked)} />
      {fits.length > 0 && <CandidateLines tag={tag} judged={shown} />}
      {fits.length === 0 && (
        <p className="pt-3">
          {source === 'set' && !isCriticalityTold
            ? 'Nobody has told how critical this set is, so no other set is asked to stop for it.'
            : source === 'buy' && nearest === null
              ? 'No standard rating answers: the supply, the poles or the power asked is not known well enough.'
              : NOTHING[source]}
          {nearest !== null && ' The nearest miss:'}
        </p>
      )}
      {fits.length === 0 && nearest !== null && (
        <ol className="rank">
          <CandidateLine tag={tag} one={nearest} />
        </ol>
      )}
      {shown.length < fits.length && (
        <p className="pt-2">
          <Link className="to" href={`${candidatesPath(tag)}?from=${source}`}>
            All {fits.length}
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
/** So many of a section are shown until all are asked for. */
const SHOWN = 10;

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
