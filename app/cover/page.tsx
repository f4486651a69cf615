import type { Metadata } from 'next';
import Link from 'next/link';
import { Fragment } from 'react';
import { areas } from '@/lib/register/queries/areas';
import { coverOfSets } from '@/lib/register/queries/cover-of-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { coverAsked, pageAsked, questionWith } from '../lists/asked-for';
import { NotReadNote } from '../lists/not-read-note';
import { PageLinks } from '../lists/page-links';
import { PrintedLine } from '../lists/printed-line';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { Tag } from '../look/tag';
import { personOf, whoMay } from '../who-is-here';
import { askedWords, CoverFilters, readOf } from './cover-filters';
import { CoverTable } from './cover-table';
import { CoverWays } from './cover-ways';
import { CriticalityTable } from './criticality-table';
import { FileLinks } from './file-links';

export const metadata: Metadata = { title: 'Cover' };

const PER_PAGE = 50;

/** For every set the shelf motors that could stand in, those with none first among equals. */
export default answered(async function CoverPage({ searchParams }: PageProps<'/cover'>) {
  const query = await searchParams;
  const question = questionWith('/cover', query, {});
  const actor = await whoMay('register.read', `/cover${question}`);
  const filter = coverAsked(query);
  const page = pageAsked(query);
  const [places, { name, timezone }, cover] = await Promise.all([
    areas(actor),
    siteSettings(actor),
    coverOfSets(actor, filter, { page, perPage: PER_PAGE }),
  ]);
  const { lines, all, counts, motors, refused } = cover;
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Cover</h1>
      <p className="mt-2">
        Which of the {motors} motors on the shelves could go into which set, judged as the shelves stand now. A motor
        counts for every set it could go into.
        {refused.length > 0 && <Refused numbers={refused} />}
      </p>
      <CoverWays current="/cover" />
      <SectionHead title="By criticality" aside="1 stops the plant, 4 can wait" />
      <CriticalityTable counts={counts} />
      <SectionHead title="Sets" aside={all} />
      <CoverFilters path="/cover" filter={filter} areas={places} />
      <NotReadNote query={query} read={readOf(filter)} />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter, places)} />
      <p className="below-table screen-only">
        <Link className="to" href={`/cover/matrix${question}`}>
          The same sets as a matrix
        </Link>
      </p>
      {lines.length === 0 ? (
        <p className="pt-3">{all > 0 ? 'The list ends before this page.' : 'No set is like this.'}</p>
      ) : (
        <CoverTable lines={lines} query={query} filter={filter} />
      )}
      <PageLinks
        path="/cover"
        query={query}
        page={page}
        perPage={PER_PAGE}
        shown={lines.length}
        all={all}
        what="Sets"
      />
      <FileLinks actor={actor} of="sets" question={question} />
    </Sheet>
  );
});

/** So many plant numbers are told one by one. */
const TOLD = 20;

function Refused({ numbers }: { numbers: readonly string[] }) {
  return (
    <>
      {' '}
      Not counted, because their winding reads too low:{' '}
      {numbers.slice(0, TOLD).map((number, i) => (
        <Fragment key={number}>
          {i > 0 && ', '}
          <Tag>{number}</Tag>
        </Fragment>
      ))}
      {numbers.length > TOLD && ` and ${numbers.length - TOLD} more`}.
    </>
  );
}
