import Link from 'next/link';
import type { FaultAt } from '@/lib/register/fault-line';
import { lastedText } from '../lasted';
import { momentText } from '../moment';
import { swapPath } from '../paths';

/** From fault to running, by the server's clock. */
export const stoodText = ({ at, closedAt }: { at: Date; closedAt: Date | null }): string | null =>
  closedAt === null ? null : lastedText(closedAt.getTime() - at.getTime());

/** When the set ran again and by what; nothing of an open fault. */
export function FaultClosing({ fault, timezone }: { fault: FaultAt; timezone: string }) {
  const { closedAt, closedBy, closedHow, closer, swapId } = fault;
  if (closedAt === null) return null;
  return (
    <>
      Ran again {momentText(closedAt, timezone)}
      {closedBy === 'swap' && swapId !== null && (
        <>
          {', '}
          <Link className="to" href={swapPath(swapId)}>
            by a swap
          </Link>
        </>
      )}
      {closedBy === 'repair' && ', put right where it stands'}
      {closedHow !== null && (
        <>
          : <bdi>{closedHow}</bdi>
        </>
      )}
      {closer !== null && (
        <>
          {' ('}
          <bdi>{closer}</bdi>)
        </>
      )}
    </>
  );
}
