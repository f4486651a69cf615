import type { Metadata } from 'next';
import type { CoverMotorFilter } from '@/lib/register/cover-filter';
import { coverOfMotors } from '@/lib/register/queries/cover-of-motors';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../../answered';
import { coverMotorsAsked, pageAsked, questionWith } from '../../lists/asked-for';
import { NotReadNote } from '../../lists/not-read-note';
import { PageLinks } from '../../lists/page-links';
import { PrintedLine } from '../../lists/printed-line';
import { ActionButton } from '../../look/action';
import { Field, SelectField } from '../../look/field';
import { SectionHead } from '../../look/section-head';
import { Sheet } from '../../look/sheet';
import { personOf, whoMay } from '../../who-is-here';
import { CoverWays } from '../cover-ways';
import { FileLinks } from '../file-links';
import { MotorTable } from './motor-table';
import { UsedTonight } from './used-tonight';

export const metadata: Metadata = { title: 'Cover by shelf motor' };

const PER_PAGE = 50;
const STATES = [
  { value: 'needed', words: 'the last for a set' },
  { value: 'idle', words: 'goes into no set' },
];

/** What each shelf motor is worth to the plant: the sets it protects, and what its use would leave. */
export default answered(async function CoverMotorsPage({ searchParams }: PageProps<'/cover/motors'>) {
  const query = await searchParams;
  const question = questionWith('/cover/motors', query, {});
  const actor = await whoMay('register.read', `/cover/motors${question}`);
  const { used: number, ...filter } = coverMotorsAsked(query);
  const page = pageAsked(query);
  const [{ name, timezone }, { lines, all, idle, needed, used }] = await Promise.all([
    siteSettings(actor),
    coverOfMotors(actor, filter, number, { page, perPage: PER_PAGE }),
  ]);
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/cover', words: 'Cover' }}>
      <h1 className="page">Cover by shelf motor</h1>
      <p className="mt-2">
        {needed === 1 ? '1 motor is' : `${needed} motors are`} the last for some set; {idle} could go into no set of the
        site. “Alike”: so many on the shelves are judged the same, itself among them. “Used tonight”: how many sets
        would then have no shelf motor left, and how many a single one.
      </p>
      <CoverWays current="/cover/motors" />
      {number !== null && <UsedTonight number={number} used={used} />}
      <SectionHead title="Motors on the shelves" aside={all} />
      <form action="/cover/motors" className="filters screen-only">
        <Field label="Words" name="q" type="search" defaultValue={filter.q} maxLength={100} autoComplete="off" />
        <SelectField label="Worth" name="state" empty="Any" options={STATES} defaultValue={filter.state ?? ''} />
        <ActionButton second>Show</ActionButton>
      </form>
      <NotReadNote query={query} read={{ state: filter.state }} />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter)} />
      {lines.length === 0 ? (
        <p className="pt-3">{all > 0 ? 'The list ends before this page.' : 'No shelf motor is like this.'}</p>
      ) : (
        <MotorTable lines={lines} query={query} />
      )}
      <PageLinks
        path="/cover/motors"
        query={query}
        page={page}
        perPage={PER_PAGE}
        shown={lines.length}
        all={all}
        what="Motors"
      />
      <FileLinks actor={actor} of="motors" question={question} />
    </Sheet>
  );
});

const askedWords = ({ q, state }: CoverMotorFilter): (string | null)[] => [
  STATES.find(({ value }) => value === state)?.words ?? null,
  q === null ? null : `the words “${q}”`,
];
