import Link from 'next/link';
import type { SetLine } from '@/lib/register/set-line';
import { standingText } from './lasted';
import { setPath } from './paths';

/** Sets as lines: tag and what it serves, the motor in it, and that it is down. The whole line is the link. */
export function SetList({ sets, timezone }: { sets: readonly SetLine[]; timezone: string }) {
  return (
    <ul className="lines">
      {sets.map((set) => (
        <li key={set.setId} className={set.failedAt === null ? undefined : 'urgent'}>
          <p className="line-name">
            <Link href={setPath(set.tag)}>
              <bdi>{set.tag}</bdi>
            </Link>
          </p>
          <span className="line-aside">
            {set.motorNumber === null ? 'no motor in it' : <bdi>{set.motorNumber}</bdi>}
            {set.frame !== null && (
              <span className="dim">
                {' '}
                <bdi>{set.frame}</bdi>
              </span>
            )}
          </span>
          <p className="line-below">{servesText(set)}</p>
          {set.failedAt !== null && (
            <p className="line-below">
              <b>Failed</b> {standingText(set.failedAt, timezone)}
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}

function servesText({ service, pump, area }: SetLine): string {
  const told = [service, pump, area].filter((text) => text !== null);
  return told.length === 0 ? 'What it serves is not told' : told.join(', ');
}
