import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { auditTrail } from '@/lib/register/queries/audit-trail';
import { colleagues } from '@/lib/register/queries/colleagues';
import { ownUnits } from '@/lib/register/queries/own-units';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { THINGS_OF_PEOPLE } from '@/lib/register/things-of-people';
import { answered } from '../answered';
import { NotReadNote } from '../lists/not-read-note';
import { PrintedLine } from '../lists/printed-line';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';
import { Sheet } from '../look/sheet';
import { SavedNote } from '../record/saved-note';
import { personOf, whoMay } from '../who-is-here';
import { doneOptions, THING_WORDS } from './action-words';
import { askedWords } from './asked-words';
import { trailAsked, trailQuestion } from './trail-asked';
import { TrailList } from './trail-list';

export const metadata: Metadata = { title: 'Audit' };

const PER_PART = 100;

/** Who changed what from what to what. */
export default answered(async function AuditPage({ searchParams }: PageProps<'/audit'>) {
  const query = await searchParams;
  const actor = await whoMay('audit.read', `/audit${trailQuestion(query)}`);
  const [{ name: site, timezone }, people, units] = await Promise.all([
    siteSettings(actor),
    colleagues(actor),
    ownUnits(actor),
  ]);
  const filter = trailAsked(query, timezone);
  const read = { from: momentOf(filter.from), to: momentOf(filter.to), change: filter.changeId };
  const after = typeof query.after === 'string' ? query.after : null;
  const trail = await auditTrail(actor, filter, { after, take: PER_PART });
  const text = (name: string) => (typeof query[name] === 'string' ? query[name] : null);
  const isOffice = may(actor, 'people.manage');
  const things = Object.entries(THING_WORDS).filter(([thing]) => isOffice || !THINGS_OF_PEOPLE.includes(thing));
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Audit</h1>
      <SavedNote query={query} />
      <form className="filters screen-only" action="/audit">
        <SelectField
          label="Who"
          name="who"
          empty="anybody"
          defaultValue={text('who')}
          options={people.map(({ userId, name }) => ({ value: userId, words: name }))}
        />
        <SelectField
          label="What"
          name="thing"
          empty="anything"
          defaultValue={text('thing')}
          options={things.map(([value, words]) => ({ value, words }))}
        />
        <SelectField
          label="Done"
          name="did"
          empty="whatever"
          defaultValue={text('did')}
          options={doneOptions(isOffice)}
        />
        <Field label="Tag or number" name="name" defaultValue={text('name')} maxLength={60} />
        <Field label="From" name="from" type="date" defaultValue={text('from')} />
        <Field label="To" name="to" type="date" defaultValue={text('to')} />
        <ActionButton second>Show</ActionButton>
      </form>
      <NotReadNote query={query} read={read} />
      <PrintedLine site={site} timezone={timezone} asked={askedWords(query, read, people)} />
      {filter.changeId !== null && (
        <p className="pt-3">
          One change, with every record of it.{' '}
          <Link className="to screen-only" href="/audit">
            The whole audit
          </Link>
        </p>
      )}
      {trail.entries.length === 0 ? (
        <p className="pt-3">{after === null ? 'Nothing is recorded that is like this.' : 'The audit ends here.'}</p>
      ) : (
        <TrailList
          trail={trail}
          units={units}
          timezone={timezone}
          mayUndo={may(actor, 'set.edit')}
          isWhole={filter.changeId !== null}
        />
      )}
      {trail.next !== null && <p className="print-only label">What is earlier is not on this paper.</p>}
      <p className="below-table label screen-only">
        <span>
          {trail.next !== null && (
            <Link className="to" href={`/audit${trailQuestion(query, { after: trail.next })}`}>
              Earlier
            </Link>
          )}
        </span>
        <a className="to" href={`/audit/export${trailQuestion(query)}`}>
          This as CSV
        </a>
      </p>
    </Sheet>
  );
});

const momentOf = (at: Date | null) => (at === null ? null : at.getTime());
