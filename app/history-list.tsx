import Link from 'next/link';
import type { FaultLine, HistoryLine } from '@/lib/register/history-line';
import { actionWords } from './audit/action-words';
import { ToldList } from './audit/told-list';
import { lastedText } from './lasted';
import { Tag } from './look/tag';
import { VERDICT_WORDS, type Verdict } from './look/words';
import { momentText } from './moment';
import { faultPath, swapPath } from './paths';

/** What happened, newest first. `isOfMotor` names the set in each line, since the motor is known. */
export function HistoryList({
  lines,
  timezone,
  isOfMotor,
}: {
  lines: readonly HistoryLine[];
  timezone: string;
  isOfMotor?: true;
}) {
  if (lines.length === 0) return <p className="pt-3">Nothing is recorded yet.</p>;
  return (
    <ol className="history">
      {lines.map((line) => (
        <li key={keyOf(line)}>
          <p className="label">
            {momentText(line.at, timezone)}
            {line.by !== null && (
              <>
                , <bdi>{line.by}</bdi>
              </>
            )}
          </p>
          <Line line={line} isOfMotor={isOfMotor === true} timezone={timezone} />
        </li>
      ))}
    </ol>
  );
}

function Line({ line, isOfMotor, timezone }: { line: HistoryLine; isOfMotor: boolean; timezone: string }) {
  switch (line.kind) {
    case 'swap':
      return (
        <p>
          <Link className="to" href={swapPath(line.swapId)}>
            <Tag>{line.motorIn}</Tag>&nbsp;in
          </Link>
          {isOfMotor && (
            <>
              {' '}
              at <Tag>{line.setTag}</Tag>
            </>
          )}
          {line.motorOut !== null && (
            <>
              , <Tag>{line.motorOut}</Tag> out {line.outTo !== null && outWords(line.outTo)}
            </>
          )}
          {line.fromSetTag !== null && (
            <>
              , taken from <Tag>{line.fromSetTag}</Tag>
            </>
          )}
          . <bdi>{line.why}</bdi>
          {line.verdict !== null && isVerdict(line.verdict) && ` (${VERDICT_WORDS[line.verdict].toLowerCase()})`}
        </p>
      );
    case 'fault':
      return (
        <p>
          <b>Failed</b>
          {isOfMotor && (
            <>
              {' '}
              at <Tag>{line.setTag}</Tag>
            </>
          )}
          {!isOfMotor && line.motor !== null && (
            <>
              {' '}
              with <Tag>{line.motor}</Tag> in it
            </>
          )}
          :{' '}
          <Link className="to" href={faultPath(line.faultId)}>
            <bdi>{line.says}</bdi>
          </Link>
          {line.closedAt !== null && closedWords(line, line.closedAt, timezone)}
          {line.closedHow !== null && <bdi> {line.closedHow}</bdi>}
        </p>
      );
    case 'change':
      return (
        <>
          <p>{actionWords(line.action)}</p>
          {line.changes.length > 0 && <ToldList changes={line.changes} />}
        </>
      );
  }
}

function closedWords({ at, closedBy }: FaultLine, closedAt: Date, timezone: string): string {
  const by = closedBy === null ? '' : closedBy === 'swap' ? ', by a swap' : ', put right where it stands';
  const stood = lastedText(closedAt.getTime() - at.getTime());
  return ` Ran again ${momentText(closedAt, timezone)}, after ${stood}${by}.`;
}

const OUT_WORDS: Record<string, string> = {
  'on-shelf': 'to a shelf',
  'at-repair': 'to repair',
  scrapped: 'to scrap',
};
export const outWords = (place: string): string => OUT_WORDS[place] ?? place;

const isVerdict = (word: string): word is Verdict => word in VERDICT_WORDS;

function keyOf(line: HistoryLine): string {
  switch (line.kind) {
    case 'swap':
      return line.swapId;
    case 'fault':
      return line.faultId;
    case 'change':
      return `${line.action} ${line.at.toISOString()}`;
  }
}
