import type { ToldChange } from '@/lib/fields/told-changes';

/** More fields than anybody reads in one line of a history; a whole record as it was entered has a page. */
const SHOWN = 12;

/** What was changed, from what to what. What was not known before is told in one run. */
export function ToldList({ changes }: { changes: readonly ToldChange[] }) {
  const news = changes.filter(({ from, to }) => from === null && to !== null);
  const others = changes.filter((change) => !news.includes(change));
  const rest = news.length - SHOWN;
  return (
    <ul className="told">
      {others.map(({ label, from, to }) => (
        <li key={label}>
          {label}:{' '}
          {from !== null && (
            <>
              <del>
                <bdi>{from}</bdi>
              </del>
              {' → '}
            </>
          )}
          <bdi>{to ?? 'not known'}</bdi>
        </li>
      ))}
      {news.length > 0 && (
        <li>
          <bdi>
            {news
              .slice(0, SHOWN)
              .map(({ label, to }) => `${label} ${to}`)
              .join(' · ')}
          </bdi>
          {rest > 0 && ` and ${rest} more`}
        </li>
      )}
    </ul>
  );
}
