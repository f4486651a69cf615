import Link from 'next/link';
import type { LoadEstimates } from '@/lib/energy/load-estimates';
import type { FoundRow } from '@/lib/register/review/acceptances';
import { SectionHead } from '../look/section-head';
import { isoDay } from '../moment';
import { measuredPath } from '../paths';
import { EstimateTable } from './estimate-table';
import { REVIEW_WORDS, URGENCY_WORDS } from './review-words';

/** On a set's page: what the review says of it, and its load by every way that the last readings allow. */
export function ReviewHere({
  tag,
  found,
  estimates,
}: {
  tag: string;
  /** Null: whoever looks may not see the review. */
  found: readonly FoundRow[] | null;
  /** Null: nothing was read at this set with the motor that is in it. */
  estimates: LoadEstimates | null;
}) {
  return (
    <section id="review">
      <SectionHead
        title="Review"
        aside={
          <Link className="to screen-only" href={measuredPath(tag)}>
            Measured while it runs
          </Link>
        }
      />
      {found?.length === 0 && <p className="pt-3">As far as the register knows, its motor suits it.</p>}
      {found !== null && found.length > 0 && (
        <>
          <ul className="cautions">
            {found.map(({ finding, isAccepted, note }) => (
              <li key={finding.rule}>
                <b>{REVIEW_WORDS[finding.rule]}</b>{' '}
                <span className="label">
                  {isAccepted && note !== null
                    ? `accepted until ${isoDay(note.againOn)}`
                    : URGENCY_WORDS[finding.urgency]}
                </span>
                <br />
                <bdi>{finding.says}</bdi>
              </li>
            ))}
          </ul>
          <p className="pt-3 screen-only">
            <Link className="to" href={`/review?q=${encodeURIComponent(tag)}&state=all`}>
              What would put it right
            </Link>
          </p>
        </>
      )}
      {estimates !== null && <EstimateTable found={estimates} />}
    </section>
  );
}
