import Link from 'next/link';
import type { RunCounts } from '@/lib/register/import/run';
import { ROW_OUTCOMES, type RowOutcome } from '@/lib/register/queries/import-rows';
import { figure } from '../counts-text';
import { OUTCOME_WORDS } from '../import-words';

/** How many rows came to what; each leads to those rows. What is written was new or changed before. */
export function Outcomes({ path, counts, shown }: { path: string; counts: RunCounts; shown: RowOutcome | null }) {
  const left = counts.new + counts.changed - counts.applied;
  // Once it is written, a row is no longer new or changed but written; the counts still tell what it was.
  const cells = ROW_OUTCOMES.filter((outcome) =>
    outcome === 'applied' ? counts.applied > 0 : counts.applied === 0 || left > 0 || !WAITS.includes(outcome),
  );
  return (
    <nav className="outcomes" aria-label="Rows by what became of them">
      <Link href={path} aria-current={shown === null ? 'page' : undefined}>
        <b>{figure(counts.done)}</b> all
      </Link>
      {cells.map((outcome) => (
        <Link key={outcome} href={`${path}?show=${outcome}`} aria-current={shown === outcome ? 'page' : undefined}>
          <b>{figure(counts[outcome])}</b> {OUTCOME_WORDS[outcome].toLowerCase()}
        </Link>
      ))}
      {counts.applied > 0 && (
        <span className="label">
          {figure(counts.new)} were new, {figure(counts.changed)} changed
          {left > 0 && `; ${figure(left)} of them not written`}
        </span>
      )}
    </nav>
  );
}

const WAITS: readonly RowOutcome[] = ['new', 'changed'];
