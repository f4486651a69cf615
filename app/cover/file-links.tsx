import { type Actor, may } from '@/lib/auth/may';

/** What the page shows, all its parts, as a file. */
export function FileLinks({ actor, of, question }: { actor: Actor; of: 'sets' | 'motors'; question: string }) {
  if (!may(actor, 'register.export')) return null;
  const rest = question.replace(/^\?/, '&');
  return (
    <p className="below-table label screen-only">
      <span>
        This list as a file:{' '}
        <a className="to" href={`/cover/export?of=${of}&format=csv${rest}`}>
          CSV
        </a>{' '}
        <a className="to" href={`/cover/export?of=${of}&format=xlsx${rest}`}>
          XLSX
        </a>
      </span>
    </p>
  );
}
