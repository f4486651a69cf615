import type { Metadata } from 'next';
import { may } from '@/lib/auth/may';
import { areas } from '@/lib/register/queries/areas';
import { faultTimes } from '@/lib/register/queries/fault-times';
import { faults } from '@/lib/register/queries/faults';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { areaWords } from '../lists/area-words';
import { NotReadNote } from '../lists/not-read-note';
import { AreaField } from '../lists/place-fields';
import { PrintedLine } from '../lists/printed-line';
import { ActionButton } from '../look/action';
import { SelectField } from '../look/field';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { FaultLines } from './fault-lines';
import { DAYS, faultsAsked, faultsQuestion } from './faults-asked';
import { TimeTable } from './time-table';

export const metadata: Metadata = { title: 'Faults' };

/** Every fault that is open, the longest standing first, and the closed ones with the time from fault to running. */
export default answered(async function FaultsPage({ searchParams }: PageProps<'/faults'>) {
  const query = await searchParams;
  const filter = faultsAsked(query);
  const question = faultsQuestion(filter);
  const actor = await whoMay('register.read', `/faults${question}`);
  const [places, { name, timezone }, { open, closed, allOpen, allClosed }, times] = await Promise.all([
    areas(actor),
    siteSettings(actor),
    faults(actor, filter),
    faultTimes(actor, filter),
  ]);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">Faults</h1>
      <form action="/faults" className="filters screen-only">
        <AreaField areas={places} areaId={filter.areaId} />
        <SelectField
          label="Closed within"
          name="days"
          options={DAYS.map((days) => ({ value: String(days), words: `${days} days` }))}
          defaultValue={String(filter.days)}
        />
        <ActionButton second>Show</ActionButton>
      </form>
      <NotReadNote
        query={query}
        read={{
          area: filter.areaId,
          days: { value: String(filter.days), words: `what was closed within ${filter.days} days` },
        }}
      />
      <PrintedLine
        site={name}
        timezone={timezone}
        asked={[filter.areaId === null ? null : areaWords(filter.areaId, places)]}
      />
      <SectionHead title="Open" aside={shownOf(open.length, allOpen)} />
      {open.length === 0 && <p className="pt-3">No fault is open.</p>}
      <FaultLines faults={open} timezone={timezone} />
      <SectionHead title="Closed" aside={`${shownOf(closed.length, allClosed)} in ${filter.days} days`} />
      {closed.length === 0 && <p className="pt-3">None was closed in these days.</p>}
      {times.length > 0 && <TimeTable times={times} />}
      <FaultLines faults={closed} timezone={timezone} />
      {may(actor, 'register.export') && (
        <p className="below-table label screen-only">
          <span>
            This list as a file:{' '}
            <a className="to" href={`/faults/export${question}`}>
              CSV
            </a>
          </span>
        </p>
      )}
    </Sheet>
  );
});

const shownOf = (shown: number, all: number) => (shown === all ? String(all) : `${shown} of ${all}`);
