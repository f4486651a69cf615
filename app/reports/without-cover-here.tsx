import Link from 'next/link';
import { CriticalityTable } from '@/app/cover/criticality-table';
import { SectionHead } from '@/app/look/section-head';
import { dayText } from '@/app/moment';
import { candidatesPath } from '@/app/paths';
import type { Actor } from '@/lib/auth/may';
import { coverOfSets } from '@/lib/register/queries/cover-of-sets';

/** As many sets as are told one by one. */
const SHOWN = 40;

/** Into which sets no motor of the shelves could go, by criticality, as the shelves stand when the page is asked for. */
export async function WithoutCoverHere({ actor, timezone }: { actor: Actor; timezone: string }) {
  const { lines, all, counts } = await coverOfSets(
    actor,
    { q: null, areaId: null, criticality: null, state: 'none', sort: 'criticality', isDown: false },
    { page: 1, perPage: SHOWN },
  );
  const sets = counts.reduce((sum, own) => sum + own.sets, 0);
  return (
    <>
      <SectionHead
        title="Sets without a spare"
        aside={`${all} of ${sets}, as of today, ${dayText(new Date(), timezone)}`}
      />
      {sets === 0 ? (
        <p className="pt-3">No set stands here yet.</p>
      ) : (
        <>
          <p className="pt-3">
            Judged as the shelves stand today, whatever the month of this report: how they stood then is not kept.
          </p>
          <CriticalityTable counts={counts} />
        </>
      )}
      {sets > 0 && all === 0 && <p className="pt-3">Every set has a motor on a shelf that could go in.</p>}
      {lines.length > 0 && (
        <ul className="lines short">
          {lines.map(({ of: { setId, tag, service, criticality } }) => (
            <li key={setId}>
              <p className="line-name">
                <Link href={candidatesPath(tag)}>
                  <bdi>{tag}</bdi>
                </Link>
              </p>
              <span className="line-aside label">
                {criticality === null ? 'criticality not told' : `criticality ${criticality} of 4`}
              </span>
              {service !== null && (
                <p className="line-below">
                  <bdi>{service}</bdi>
                </p>
              )}
            </li>
          ))}
        </ul>
      )}
      {all > lines.length && (
        <p className="pt-3">
          And {all - lines.length} more, none of them more critical:{' '}
          <Link className="to" href="/cover?state=none">
            all of them
          </Link>
          .
        </p>
      )}
    </>
  );
}
