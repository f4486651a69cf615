import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { areas } from '@/lib/register/queries/areas';
import { listSets } from '@/lib/register/queries/list-sets';
import { ownViews } from '@/lib/register/queries/own-views';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { pageAsked, questionWith, setsAsked } from '../lists/asked-for';
import { ExportLinks } from '../lists/export-links';
import { LabelsLink } from '../lists/labels-link';
import { NotReadNote } from '../lists/not-read-note';
import { PageLinks } from '../lists/page-links';
import { PrintedLine } from '../lists/printed-line';
import { Views } from '../lists/views';
import { Sheet } from '../look/sheet';
import { SavedNote } from '../record/saved-note';
import { SetList } from '../set-list';
import { personOf, whoMay } from '../who-is-here';
import { askedWords, SetFilters } from './set-filters';
import { SetTable } from './set-table';

export const metadata: Metadata = { title: 'Sets' };

const PER_PAGE = 50;

/** Every set of the site: found, put in order, and at a desk chosen to be changed together. */
export default answered(async function SetsPage({ searchParams }: PageProps<'/sets'>) {
  const query = await searchParams;
  const actor = await whoMay('register.read', `/sets${questionWith('/sets', query, {})}`);
  const filter = setsAsked(query);
  const page = pageAsked(query);
  const [places, { sets, all }, { name, timezone }, views] = await Promise.all([
    areas(actor),
    listSets(actor, filter, { page, perPage: PER_PAGE }),
    siteSettings(actor),
    ownViews(actor, '/sets'),
  ]);
  const question = questionWith('/sets', query, {});
  return (
    <Sheet wide current="/sets" person={personOf(actor)}>
      <div className="top">
        <h1 className="page">Sets</h1>
        {may(actor, 'set.edit') && (
          <Link className="to screen-only" href="/sets/new">
            Enter a set
          </Link>
        )}
      </div>
      <SavedNote query={query} />
      <SetFilters filter={filter} areas={places} />
      <NotReadNote
        query={query}
        read={{
          ...{ area: filter.areaId, criticality: filter.criticality, condition: filter.condition, volts: filter.volts },
          sort: { value: filter.sort, words: 'by tag' },
        }}
      />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter, places)} />
      <Views page="/sets" query={question} views={views} />
      {sets.length === 0 ? (
        <p className="pt-3">
          {all > 0
            ? 'The list ends before this page.'
            : question === ''
              ? 'No set stands here yet.'
              : 'No set is like this.'}
        </p>
      ) : (
        <>
          <div className="on-phone">
            <SetList sets={sets} timezone={timezone} />
          </div>
          <SetTable
            sets={sets}
            query={query}
            filter={filter}
            all={all}
            mayEdit={may(actor, 'set.edit')}
            timezone={timezone}
          />
        </>
      )}
      <PageLinks path="/sets" query={query} page={page} perPage={PER_PAGE} shown={sets.length} all={all} what="Sets" />
      <LabelsLink path="/sets" query={query} />
      <ExportLinks actor={actor} path="/sets" query={query} />
    </Sheet>
  );
});
