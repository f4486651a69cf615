import Link from 'next/link';
import { VERDICT_WORDS, type Verdict } from '@/app/look/words';
import { momentText } from '@/app/moment';
import { motorPath, swapPath } from '@/app/paths';
import type { SwapLine } from '@/lib/register/history-line';
import type { EndedRepair } from '@/lib/register/queries/month-report';

export function SwapLines({ swaps, timezone }: { swaps: readonly SwapLine[]; timezone: string }) {
  return (
    <ul className="lines">
      {swaps.map(({ swapId, setTag, motorIn, motorOut, why, verdict, at, by }) => (
        <li key={swapId}>
          <p className="line-name">
            <Link href={swapPath(swapId)}>
              <bdi>{setTag}</bdi>
            </Link>
          </p>
          <span className="line-aside label">
            {verdict === null ? 'not judged' : VERDICT_WORDS[verdict as Verdict]}
          </span>
          <p className="line-below">
            <bdi>{motorIn}</bdi> in, {motorOut === null ? 'nothing' : <bdi>{motorOut}</bdi>} out. <bdi>{why}</bdi>
          </p>
          <p className="line-below">
            {momentText(at, timezone)}, <bdi>{by}</bdi>
          </p>
        </li>
      ))}
    </ul>
  );
}

export function RepairLines({ repairs, timezone }: { repairs: readonly EndedRepair[]; timezone: string }) {
  return (
    <ul className="lines">
      {repairs.map(({ repairId, motor, setTag, reason, at, endedAt, decision }) => (
        <li key={repairId}>
          <p className="line-name">
            <Link href={motorPath(motor)}>
              <bdi>{motor}</bdi>
            </Link>
          </p>
          <span className="line-aside label">
            {decision === 'scrap' ? 'scrapped' : decision === null ? 'not decided' : 'repaired'}
          </span>
          <p className="line-below">
            <bdi>{reason}</bdi>
            {setTag !== null && (
              <>
                , out of <bdi>{setTag}</bdi>
              </>
            )}
          </p>
          <p className="line-below">
            {momentText(at, timezone)} to {momentText(endedAt, timezone)}
          </p>
        </li>
      ))}
    </ul>
  );
}
