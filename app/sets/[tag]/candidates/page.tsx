import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { Mark } from '@/app/look/mark';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { momentText, today } from '@/app/moment';
import { candidatesPath, faultPath, setPath, written } from '@/app/paths';
import { PictureNote } from '@/app/pictures/picture-note';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import type { Source } from '@/lib/matching/offer/candidate';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../unknown-set';
import { CandidateLines } from './candidate-lines';
import { CandidateSection } from './candidate-section';
import { offerLine } from './offer-line';
import { rankedCandidates } from './ranked-candidates';
import { SHOWN, SOURCES } from './sources';

type Props = PageProps<'/sets/[tag]/candidates'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `What can go in? ${written((await params).tag)}`,
});

export default answered(async function CandidatesPage({ params, searchParams }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('set.assess', candidatesPath(tag));
  must(actor, 'set.assess');
  const [known, { settings, timezone }, asked] = await Promise.all([
    setByTag(actor, tag),
    siteSettings(actor),
    searchParams,
  ]);
  if (known === null) return unknownSet(actor, tag);
  const { row, set, faults } = known;
  const reported = faults.find(({ id }) => id === asked.fault) ?? null;
  const ranked = await rankedCandidates(actor, known, settings, today(timezone));
  const only = SOURCES.find((source) => source === asked.from) ?? null;
  const nearestOf = (source: Source) => {
    const nearest = ranked.unsuitable.find(({ candidate }) => candidate.from === source);
    return nearest === undefined ? null : offerLine(nearest);
  };
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(row.tag), words: row.tag }}>
      <TitleBlock
        small
        tag={row.tag}
        name={<bdi>{row.service ?? 'what it serves is not told'}</bdi>}
        cells={[
          {
            label: 'Goes out',
            value: set.failed === null ? 'no motor' : <Out id={set.failed.id} frame={set.failed.frame} />,
          },
          { label: 'Area', value: <bdi>{row.area?.name ?? 'not told'}</bdi> },
          { label: 'Judged', value: momentText(new Date(), timezone) },
        ]}
      />
      {reported !== null && (
        <p className="problem-list" role="status">
          The fault is reported: <bdi>{reported.says}</bdi>.{' '}
          <Link className="to" href={faultPath(reported.id)}>
            Add a photograph
          </Link>
        </p>
      )}
      <PictureNote query={asked} />
      <h2 className="page">What can go in?</h2>
      {SOURCES.filter((source) => only === null || only === source).map((source) => (
        <CandidateSection
          key={source}
          tag={row.tag}
          source={source}
          lines={ranked.fits[source].slice(0, only === source ? undefined : SHOWN).map(offerLine)}
          count={ranked.fits[source].length}
          asked={ranked.asked[source]}
          nearest={nearestOf(source)}
          isCriticalityTold={row.criticality !== null}
        />
      ))}
      {only !== null && (
        <p className="pt-4">
          <Link className="to" href={candidatesPath(row.tag)}>
            All that can go in
          </Link>
        </p>
      )}
      {ranked.unsuitableCount > 0 && (
        <details className="mt-6 border-rule border-y">
          <summary className="more">
            <Mark verdict="unsuitable" size="middle" />
            <b>Unsuitable</b>
            <span className="label">{ranked.unsuitableCount}, with reasons</span>
          </summary>
          {ranked.unsuitable.length < ranked.unsuitableCount && (
            <p className="label">
              The {ranked.unsuitable.length} nearest misses of those looked at, fewest reasons first.
            </p>
          )}
          <CandidateLines tag={row.tag} lines={ranked.unsuitable.map(offerLine)} />
        </details>
      )}
    </Sheet>
  );
});

function Out({ id, frame }: { id: string; frame: string | null }) {
  return (
    <>
      <Tag>{id}</Tag>
      {frame !== null && (
        <>
          , <bdi>{frame}</bdi>
        </>
      )}
    </>
  );
}
