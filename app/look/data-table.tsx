import type { ReactNode } from 'react';

/** A desk table that may be wider than its page: it scrolls by itself, a matrix both ways under its heads. Rows are plain tr, td.num, td.id, tr.act. */
export function DataTable({ name, matrix, children }: { name: string; matrix?: true; children: ReactNode }) {
  return (
    <section className={matrix ? 'tablewrap matrix-wrap' : 'tablewrap'} aria-label={name} {...REACHABLE}>
      <table className={matrix ? 'grid-table matrix' : 'grid-table'}>
        <caption className="vh">{name}</caption>
        {children}
      </table>
    </section>
  );
}

/** What scrolls must be reached by the keyboard, though it is nothing to press. */
const REACHABLE = { tabIndex: 0 };
