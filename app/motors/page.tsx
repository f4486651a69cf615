import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { listMotors } from '@/lib/register/queries/list-motors';
import { ownViews } from '@/lib/register/queries/own-views';
import { shelves } from '@/lib/register/queries/shelves';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { motorsAsked, pageAsked, questionWith } from '../lists/asked-for';
import { ExportLinks } from '../lists/export-links';
import { LabelsLink } from '../lists/labels-link';
import { NotReadNote } from '../lists/not-read-note';
import { PageLinks } from '../lists/page-links';
import { PrintedLine } from '../lists/printed-line';
import { Views } from '../lists/views';
import { Sheet } from '../look/sheet';
import { SavedNote } from '../record/saved-note';
import { personOf, whoMay } from '../who-is-here';
import { askedWords, MotorFilters } from './motor-filters';
import { MotorTable } from './motor-table';
import { NoPlateLinks } from './no-plate-links';

export const metadata: Metadata = { title: 'Motors' };

const PER_PAGE = 50;

/** Every motor of the site, wherever it is. */
export default answered(async function MotorsPage({ searchParams }: PageProps<'/motors'>) {
  const query = await searchParams;
  const question = questionWith('/motors', query, {});
  const actor = await whoMay('register.read', `/motors${question}`);
  const filter = motorsAsked(query);
  const page = pageAsked(query);
  const [places, { motors, all }, { name, timezone }, views] = await Promise.all([
    shelves(actor),
    listMotors(actor, filter, { page, perPage: PER_PAGE }),
    siteSettings(actor),
    ownViews(actor, '/motors'),
  ]);
  return (
    <Sheet wide current="/motors" person={personOf(actor)}>
      <div className="top">
        <h1 className="page">Motors</h1>
        {may(actor, 'motor.edit') && (
          <Link className="to screen-only" href="/motors/new">
            Enter a motor
          </Link>
        )}
      </div>
      <NoPlateLinks />
      <SavedNote query={query} />
      <MotorFilters filter={filter} shelves={places} />
      <NotReadNote
        query={query}
        read={{
          ...{ place: filter.place, shelf: filter.shelfId, volts: filter.volts, poles: filter.poles },
          sort: { value: filter.sort, words: 'by plant number' },
        }}
      />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter, places)} />
      <Views page="/motors" query={question} views={views} />
      {motors.length === 0 ? (
        <p className="pt-3">
          {all > 0
            ? 'The list ends before this page.'
            : question === ''
              ? 'No motor is entered yet.'
              : 'No motor is like this.'}
        </p>
      ) : (
        <MotorTable motors={motors} query={query} filter={filter} all={all} mayEdit={may(actor, 'motor.edit')} />
      )}
      <PageLinks
        path="/motors"
        query={query}
        page={page}
        perPage={PER_PAGE}
        shown={motors.length}
        all={all}
        what="Motors"
      />
      <LabelsLink path="/motors" query={query} />
      <ExportLinks actor={actor} path="/motors" query={query} />
    </Sheet>
  );
});
