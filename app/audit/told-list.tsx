import type { ToldChange } from '@/lib/fields/told-changes';

/** More fields than anybody reads in one line of a history; a whole record as it was entered has a page. */
const SHOWN = 30;

/** What was changed, from what to what. */
export function ToldList({ changes }: { changes: readonly ToldChange[] }) {
  return (
    <ul className="told">
      {changes.slice(0, SHOWN).map(({ label, from, to }) => (
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
      {changes.length > SHOWN && <li>and {changes.length - SHOWN} more</li>}
    </ul>
  );
}
