import type { Metadata } from 'next';
import Link from 'next/link';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { CoverLostHere } from '@/app/cover/cover-lost-here';
import { outWords } from '@/app/history-list';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { FindingsThatFit, FindingsToDo, FindingsToKnow } from '@/app/look/finding-table';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { VerdictLine } from '@/app/look/verdict-line';
import { CRITERION_WORDS, hoursText } from '@/app/look/words';
import { dayText, momentText } from '@/app/moment';
import NotFound from '@/app/not-found';
import { motorPath, setPath, swapPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { VERDICTS } from '@/lib/matching/verdict';
import { jobOfSwap } from '@/lib/register/queries/job-of-swap';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { type KnownSwap, swapById } from '@/lib/register/queries/swap-by-id';
import { figure } from '@/lib/units/figure';
import { ReadingsOfSwap } from './readings-of-swap';

type Props = PageProps<'/swaps/[id]'>;

export const metadata: Metadata = { title: 'Swap' };

/** A swap as it was recorded: nothing in it is judged anew. */
export default answered(async function SwapRecordPage({ params }: Props) {
  const id = written((await params).id);
  const actor = await whoMay('register.read', swapPath(id));
  const [swap, job, { timezone }] = await Promise.all([swapById(actor, id), jobOfSwap(actor, id), siteSettings(actor)]);
  if (swap === null || job === null) {
    answerStatus(404);
    return <NotFound />;
  }
  const verdict = VERDICTS.find((one) => one === swap.verdict) ?? null;
  const unsigned = swap.findings.filter(
    ({ grade, criterion }) => grade === 'check' && !swap.checks.some((check) => check.criterion === criterion),
  );
  return (
    <Sheet wide person={personOf(actor)} back={{ href: setPath(swap.setTag), words: swap.setTag }}>
      <TitleBlock
        small
        tag={swap.setTag}
        name="Swap, as recorded"
        cells={[
          { label: 'In', value: <Tag>{swap.motorIn}</Tag> },
          { label: 'Out', value: swap.motorOut === null ? 'no motor' : <Tag>{swap.motorOut}</Tag> },
          { label: 'Date', value: dayText(swap.at, timezone) },
        ]}
      />
      <div className="cols">
        <div>
          {verdict === null ? (
            <p className="pt-4">Recorded without a judgement.</p>
          ) : (
            <VerdictLine verdict={verdict} hours={verdict === 'unsuitable' ? null : swap.hours} />
          )}
          <Facts
            rows={[
              { label: 'Recorded by', value: <bdi>{swap.by}</bdi> },
              { label: 'When', value: momentText(swap.at, timezone) },
              {
                label: 'Motor in',
                value: (
                  <Link className="to" href={motorPath(swap.motorIn)}>
                    <Tag>{swap.motorIn}</Tag>
                  </Link>
                ),
              },
              ...(swap.fromSetTag === null ? [] : [{ label: 'Taken from', value: <Tag>{swap.fromSetTag}</Tag> }]),
              ...(swap.motorOut === null
                ? []
                : [
                    {
                      label: 'Motor out',
                      value: (
                        <>
                          <Link className="to" href={motorPath(swap.motorOut)}>
                            <Tag>{swap.motorOut}</Tag>
                          </Link>
                          {swap.outTo !== null && `, ${outWords(swap.outTo)}`}
                        </>
                      ),
                    },
                  ]),
              { label: 'Why', value: <bdi>{swap.why}</bdi> },
              ...(swap.readings === null ? readBesides(swap) : []),
            ]}
          />
          {swap.note !== null && (
            <>
              <SectionHead title="Note" />
              <p className="pt-3 whitespace-pre-wrap">
                <bdi>{swap.note}</bdi>
              </p>
            </>
          )}
          <SectionHead title="Work done" />
          {swap.workDone.length === 0 ? (
            <p className="pt-3">None was told beyond the swap itself.</p>
          ) : (
            <Facts rows={swap.workDone.map(({ what, hours }) => ({ label: what, value: hoursText(hours) }))} />
          )}
          {swap.fromSetTag === null && <CoverLostHere actor={actor} number={swap.motorIn} isTaken />}
          <ReadingsOfSwap swap={swap} steps={job.steps} mayAdd={may(actor, 'swap.record')} timezone={timezone} />
          {(swap.checks.length > 0 || unsigned.length > 0) && (
            <>
              <SectionHead title="Checks" />
              <Facts
                rows={[
                  ...swap.checks.map(({ criterion, says }) => ({
                    label: `${wordsOf(criterion)}: ${says}`,
                    value: <>signed by {swap.by}</>,
                  })),
                  ...unsigned.map(({ criterion, says }) => ({
                    label: `${wordsOf(criterion)}: ${says}`,
                    value: <b>not signed</b>,
                  })),
                ]}
              />
            </>
          )}
        </div>
        <div>
          <FindingsToDo findings={swap.findings} />
          <FindingsToKnow findings={swap.findings} />
          <FindingsThatFit findings={swap.findings} />
        </div>
      </div>
      <ActionBar>
        <Action href={setPath(swap.setTag)}>To the set</Action>
      </ActionBar>
    </Sheet>
  );
});

/** Of a swap that was told without readings, or before there were any. */
const readBesides = ({ insulationMohm, overloadA }: KnownSwap) => [
  { label: 'Insulation', value: insulationMohm === null ? 'not told' : `${figure(insulationMohm)} MΩ` },
  { label: 'Overload set to', value: overloadA === null ? 'not told' : `${figure(overloadA)} A` },
];

/** A record may hold a criterion that is asked no longer: it keeps its id. */
const wordsOf = (criterion: string): string =>
  criterion in CRITERION_WORDS ? CRITERION_WORDS[criterion as keyof typeof CRITERION_WORDS] : criterion;
