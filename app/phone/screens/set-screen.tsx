import { useEffect } from 'react';
import { HistoryList } from '@/app/history-list';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { TitleBlock } from '@/app/look/title-block';
import { momentText } from '@/app/moment';
import { MotorShown, NoMotorShown } from '@/app/motor-shown';
import { candidatesPath, setPath } from '@/app/paths';
import { dutyFacts, seatFacts, supplyFacts, surroundingsFacts } from '@/app/sets/[tag]/set-facts';
import type { PackLine } from '@/lib/offline/pack';
import { askAhead } from '../ahead';
import type { SetHere, Status } from '../asked';
import { drawAhead } from '../draw-ahead';
import { lastSwapOf } from '../last-swap';
import { Asked } from '../look/asked';
import { OpenFaults } from '../look/open-faults';
import { WaitingLines } from '../look/waiting-lines';
import { noteOpened } from '../recent-tags';
import { timezoneOf } from '../timezone-of';
import { type Answer, useAsk } from '../use-ask';
import { useIsDrawn } from '../use-is-drawn';
import { NotHere } from './not-here';

/** The set: what failed, what is in it, what the pump asks, what feeds it, what happened. */
export function SetScreen({ status, tag }: { status: Answer<Status>; tag: string }) {
  const answer = useAsk('set', { tag });
  return (
    <Asked answer={answer} nothing={<NotHere what="set" name={tag} />}>
      {(here) =>
        status.state === 'here' ? <SetSheet here={here} status={status.value} timezone={timezoneOf(status)} /> : null
      }
    </Asked>
  );
}

/** By then the set is drawn. */
const SHOWN_MS = 50;

function SetSheet({
  here: { set, pumpSet, motor, mount, atSupply, waiting },
  status,
  timezone,
}: {
  here: SetHere;
  status: Status;
  timezone: string;
}) {
  const isDrawn = useIsDrawn();
  useEffect(() => {
    if (!isDrawn) return;
    noteOpened(set.tag);
    let isLeft = false;
    // The list is what is asked for next: it is there when it is touched.
    const soon = setTimeout(async () => {
      await askAhead('ranked', { tag: set.tag, whole: null });
      if (!isLeft) drawAhead(setPath(set.tag), candidatesPath(set.tag));
    }, SHOWN_MS);
    return () => {
      isLeft = true;
      clearTimeout(soon);
    };
  }, [isDrawn, set.tag]);
  const fallen = set.faults[0] ?? null;
  return (
    <>
      <TitleBlock
        tag={set.tag}
        kind="Set"
        name={
          <bdi>{[set.service, set.pump?.description].filter(Boolean).join(', ') || 'what it serves is not told'}</bdi>
        }
        cells={[
          { label: 'Area', value: <bdi>{set.area ?? 'not told'}</bdi> },
          {
            label: 'State',
            value: fallen === null ? 'No fault open' : <FailedAt at={fallen.at} timezone={timezone} />,
          },
          { label: 'Criticality', value: set.criticality === null ? 'not told' : `${set.criticality} of 4` },
        ]}
      />
      <WaitingLines waiting={waiting} timezone={timezone} />
      <OpenFaults set={set} status={status} />
      {motor === null || mount === null ? (
        <NoMotorShown />
      ) : (
        <MotorShown motor={motor.motor} maker={motor.maker} serial={motor.serial} mount={mount} atSupply={atSupply} />
      )}
      {isDrawn && <Below here={{ set, pumpSet, motor, waiting }} timezone={timezone} />}
      <ActionBar>
        <Action href={candidatesPath(set.tag)}>What can go in?</Action>
        <Action href={`${setPath(set.tag)}/fault`} second>
          It has failed
        </Action>
      </ActionBar>
    </>
  );
}

/** What lies below the screen at first. */
function Below({
  here: { set, pumpSet, motor, waiting },
  timezone,
}: {
  here: Pick<SetHere, 'set' | 'pumpSet' | 'motor' | 'waiting'>;
  timezone: string;
}) {
  return (
    <>
      {lastSwapOf({ set, motor, waiting }) !== null && (
        <p className="pt-3">
          <a className="to" href={`${setPath(set.tag)}/readings`}>
            Add readings of its swap
          </a>
        </p>
      )}
      <SectionHead title="Duty" aside="what the pump asks" />
      <Facts rows={dutyFacts(pumpSet)} />
      <SectionHead title="Supply" />
      <Facts rows={supplyFacts(pumpSet)} />
      <SectionHead title="Seat and coupling" />
      <Facts rows={seatFacts(pumpSet)} />
      <SectionHead title="Surroundings and needs" />
      <Facts rows={surroundingsFacts(pumpSet)} />
      {set.note !== null && (
        <>
          <SectionHead title="Note" />
          <p className="pt-3">
            <bdi>{set.note}</bdi>
          </p>
        </>
      )}
      <SectionHead title="History" aside="the last few" />
      <HistoryList lines={set.history.map((line) => lineOf(line, set.tag))} timezone={timezone} />
    </>
  );
}

function FailedAt({ at, timezone }: { at: string; timezone: string }) {
  return (
    <>
      <b>Failed</b> {momentText(new Date(at), timezone)}
    </>
  );
}

function lineOf(line: PackLine, setTag: string) {
  const at = new Date(line.at);
  if (line.kind === 'swap') return { ...line, swapId: line.id, at };
  return {
    ...line,
    faultId: line.id,
    setTag,
    at,
    closedAt: line.closedAt === null ? null : new Date(line.closedAt),
  };
}
