import type { Metadata } from 'next';
import Link from 'next/link';
import { Suspense } from 'react';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { FaultLines } from '@/app/faults/fault-lines';
import { TimeTable } from '@/app/faults/time-table';
import { PrintButton } from '@/app/labels/print-button';
import { lastedText } from '@/app/lasted';
import { ActionBar } from '@/app/look/action-bar';
import { Empty } from '@/app/look/empty';
import { Figures } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText } from '@/app/moment';
import { written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { type MonthReport, monthReport } from '@/lib/register/queries/month-report';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { monthAsked, monthWords, reportPath } from '../month';
import { RepairLines, SwapLines } from '../month-lines';
import { ReviewMonthHere } from '../review-month-here';
import { WithoutCoverHere } from '../without-cover-here';

type Props = PageProps<'/reports/[month]'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `Report, ${written((await params).month)}`,
});

/** What happened in a month of the site: faults and how long sets stood, swaps, repairs, the set review; and what has no spare today. */
export default answered(async function MonthPage({ params }: Props) {
  const asked = written((await params).month);
  const actor = await whoMay('register.read', reportPath(asked));
  const { name, timezone } = await siteSettings(actor);
  const month = monthAsked(asked, timezone);
  if (month === null) {
    answerStatus(404);
    return (
      <Sheet person={personOf(actor)} back={{ href: '/desk', words: 'Desk' }}>
        <Empty
          isWholePage
          title="No such month"
          says="A month is written as 2026-11."
          next={[
            {
              words: 'The month that runs',
              link: (
                <Link className="to" href={reportPath('now')}>
                  Report
                </Link>
              ),
            },
          ]}
        />
      </Sheet>
    );
  }
  const report = await monthReport(actor, month.span);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/desk', words: 'Desk' }}>
      <TitleBlock
        small
        tag={monthWords(month.text)}
        name="Report of the month"
        cells={[
          { label: 'Site', value: <bdi>{name}</bdi> },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      <p className="below-table screen-only">
        <Link className="to" href={reportPath(month.before)}>
          {monthWords(month.before)}
        </Link>
        {!month.isNow && !month.isToCome && (
          <Link className="to" href={reportPath(month.after)}>
            {monthWords(month.after)}
          </Link>
        )}
      </p>
      {month.isToCome ? (
        <p className="pt-3">This month is still to come.</p>
      ) : (
        <Happened report={report} timezone={timezone} isNow={month.isNow} />
      )}
      {!month.isToCome && may(actor, 'review.read') && <ReviewMonthHere actor={actor} month={month} />}
      {!month.isToCome && (
        <Suspense fallback={<p className="pt-3">The shelves are being looked at, about a second.</p>}>
          <WithoutCoverHere actor={actor} timezone={timezone} />
        </Suspense>
      )}
      {!month.isToCome && may(actor, 'register.export') && (
        <p className="below-table label screen-only">
          <span>
            This month as a file:{' '}
            <a className="to" href={`${reportPath(month.text)}/export`}>
              CSV
            </a>
          </span>
        </p>
      )}
      {!month.isToCome && (
        <ActionBar>
          <PrintButton />
        </ActionBar>
      )}
    </Sheet>
  );
});

function Happened({ report, timezone, isNow }: { report: MonthReport; timezone: string; isNow: boolean }) {
  const { faults, allFaults, openAtEnd, times, byArea, swaps, allSwaps, repairs, allRepairs } = report;
  const isQuiet = allFaults + allSwaps + allRepairs + (times?.count ?? 0) === 0;
  return (
    <>
      {isQuiet && <p className="pt-3">Nothing failed, was swapped or came back from repair in this month.</p>}
      <Figures
        cells={[
          { label: 'Faults', value: String(allFaults) },
          { label: isNow ? 'Open now' : 'Open at its end', value: String(openAtEnd) },
          { label: 'Ended', value: String(times?.count ?? 0) },
          { label: 'Half were over in', value: times === null ? 'none ended' : lastedText(times.medianMs) },
          { label: 'Swaps', value: String(allSwaps) },
          { label: 'Repairs ended', value: String(allRepairs) },
        ]}
      />
      {byArea.length > 0 && <TimeTable times={byArea} />}
      <SectionHead title="Faults" aside={shownOf(faults.length, allFaults)} />
      {faults.length === 0 ? <p className="pt-3">None began.</p> : <FaultLines faults={faults} timezone={timezone} />}
      <SectionHead title="Swaps" aside={shownOf(swaps.length, allSwaps)} />
      {swaps.length === 0 ? (
        <p className="pt-3">None was recorded.</p>
      ) : (
        <SwapLines swaps={swaps} timezone={timezone} />
      )}
      <SectionHead title="Repairs ended" aside={shownOf(repairs.length, allRepairs)} />
      {repairs.length === 0 ? (
        <p className="pt-3">None ended.</p>
      ) : (
        <RepairLines repairs={repairs} timezone={timezone} />
      )}
    </>
  );
}

const shownOf = (shown: number, all: number) => (shown === all ? String(all) : `${shown} of ${all}`);
