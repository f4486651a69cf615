import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { AuditLinks } from '@/app/audit/audit-links';
import { DoubtsHere, DoubtsLink } from '@/app/doubts/doubts-here';
import { SaidNote } from '@/app/doubts/said-note';
import { OpenFaults } from '@/app/faults/open-faults';
import { RunsAgain } from '@/app/faults/runs-again';
import { HistoryList } from '@/app/history-list';
import { LabelHere } from '@/app/labels/label-here';
import { sinceText } from '@/app/lasted';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, today } from '@/app/moment';
import { candidatesPath, failedPath, nextPath, setEditPath, setOnPath, setPath, written } from '@/app/paths';
import { Photographs } from '@/app/pictures/photographs';
import { SavedNote } from '@/app/record/saved-note';
import { ReviewHere } from '@/app/review/review-here';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { loadEstimates } from '@/lib/energy/load-estimates';
import { NOT_MEASURED } from '@/lib/energy/measured';
import { measuredOf } from '@/lib/energy/read-measured';
import { doubtsOf } from '@/lib/register/queries/doubts-of';
import { measurements } from '@/lib/register/queries/measurements';
import { openReadings } from '@/lib/register/queries/open-readings';
import { reviewOfSet } from '@/lib/register/queries/review-of-set';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../unknown-set';
import { MotorInSet } from './motor-in-set';
import { OpenReadingsHere } from './open-readings-here';
import { dutyFacts, seatFacts, supplyFacts, surroundingsFacts } from './set-facts';

type Props = PageProps<'/sets/[tag]'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: written((await params).tag),
});

export default answered(async function SetPage({ params, searchParams }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('register.read', setPath(tag));
  const known = await setByTag(actor, tag);
  if (known === null) return unknownSet(actor, tag);
  const { row, set, faults } = known;
  const { timezone, settings } = await siteSettings(actor);
  const things = [
    { thing: 'set', id: row.id } as const,
    ...(row.motor ? [{ thing: 'motor', id: row.motor.id } as const] : []),
  ];
  const [lines, doubts, open, [newest]] = await Promise.all([
    setHistory(actor, row.id, 20),
    doubtsOf(actor, things, today(timezone)),
    openReadings(actor, row.id),
    measurements(actor, row.id, 1),
  ]);
  const read = newest === undefined ? NOT_MEASURED : measuredOf(newest.figures);
  const isOfMotor = newest !== undefined && newest.motorId === (row.motor?.id ?? null);
  const found = may(actor, 'review.read')
    ? await reviewOfSet(actor, known, { settings, read, isOfMotor, today: today(timezone) })
    : null;
  const estimates = isOfMotor && set.failed !== null ? loadEstimates(set, set.failed, read, settings) : null;
  const query = await searchParams;
  const fallen = faults[0] ?? null;
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <TitleBlock
        tag={row.tag}
        kind="Set"
        name={
          <bdi>{[row.service, row.pump?.description].filter(Boolean).join(', ') || 'what it serves is not told'}</bdi>
        }
        cells={[
          { label: 'Area', value: <bdi>{row.area?.name ?? 'not told'}</bdi> },
          {
            label: 'State',
            value: fallen === null ? 'No fault open' : <FailedAt at={fallen.at} timezone={timezone} />,
          },
          { label: 'Date', value: dayText(new Date(), timezone) },
          { label: 'Criticality', value: row.criticality === null ? 'not told' : `${row.criticality} of 4` },
        ]}
      />
      {faults.length > 0 && (
        <>
          <OpenFaults faults={faults} timezone={timezone} />
          <div className="screen-only">
            <RunsAgain of={{ setId: row.id }} to={setPath(row.tag)} />
          </div>
        </>
      )}
      <SavedNote query={query} />
      <SaidNote query={query} />
      <OpenReadingsHere open={open} />
      <DoubtsLink doubts={doubts} />
      <div className="cols">
        <div>
          <MotorInSet row={row} set={set} />
          <Photographs
            actor={actor}
            of={{ thing: 'set', id: row.id }}
            path={setPath(row.tag)}
            query={query}
            timezone={timezone}
          />
        </div>
        <div>
          {may(actor, 'set.edit') && (
            <p className="pt-3 screen-only">
              <Link className="to" href={setEditPath(row.tag)}>
                Edit this set
              </Link>
            </p>
          )}
          <p className="pt-3 screen-only">
            <Link className="to" href={nextPath(row.tag)}>
              The next failure: energy, money, hours down
            </Link>
          </p>
          <LabelHere row={row} />
          <SectionHead title="Duty" aside="what the pump asks" />
          <Facts rows={dutyFacts(set)} />
          <SectionHead title="Seat and coupling" />
          <Facts rows={seatFacts(set)} />
          <SectionHead title="Supply" />
          <Facts rows={supplyFacts(set)} />
          <SectionHead title="Surroundings and needs" />
          <Facts rows={surroundingsFacts(set)} />
          {row.note !== null && (
            <>
              <SectionHead title="Note" />
              <p className="pt-3">
                <bdi>{row.note}</bdi>
              </p>
            </>
          )}
        </div>
      </div>
      <ReviewHere tag={row.tag} found={found} estimates={estimates} />
      <DoubtsHere actor={actor} doubts={doubts} timezone={timezone} back={setPath(row.tag)} />
      <section>
        <SectionHead title="History" />
        <HistoryList lines={lines} timezone={timezone} />
        <AuditLinks actor={actor} name={row.tag} onPath={setOnPath(row.tag)} />
      </section>
      <ActionBar>
        <Action href={candidatesPath(row.tag)}>What can go in?</Action>
        <Action second href={failedPath(row.tag)}>
          It has failed
        </Action>
      </ActionBar>
    </Sheet>
  );
});

function FailedAt({ at, timezone }: { at: Date; timezone: string }) {
  return (
    <>
      <b>Failed</b> {sinceText(at, timezone)}
    </>
  );
}
