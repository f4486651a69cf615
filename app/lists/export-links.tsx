import type { Actor } from '@/lib/auth/may';
import { may } from '@/lib/auth/may';
import { type Query, questionWith } from './asked-for';

/** The list as it is asked for, as a file that an import takes back. */
export function ExportLinks({ actor, path, query }: { actor: Actor; path: '/sets' | '/motors'; query: Query }) {
  if (!may(actor, 'register.export')) return null;
  const question = questionWith(path, query, {}).replace(/^\?/, '&');
  return (
    <p className="below-table label screen-only">
      <span>
        This list as a file:{' '}
        <a className="to" href={`/exports${path}?format=csv${question}`}>
          CSV
        </a>{' '}
        <a className="to" href={`/exports${path}?format=xlsx${question}`}>
          XLSX
        </a>
      </span>
    </p>
  );
}
