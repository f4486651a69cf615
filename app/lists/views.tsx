import Link from 'next/link';
import { ActionButton } from '../look/action';
import { Field } from '../look/field';
import { keepViewHere } from './keep-view-here';

/** The person's own views of a list: to go to, to keep, to drop. */
export function Views({
  page,
  query,
  views,
}: {
  page: string;
  query: string;
  views: readonly { id: string; name: string; query: string }[];
}) {
  return (
    <details className="views screen-only">
      <summary>Views{views.length > 0 && ` (${views.length})`}</summary>
      <ul>
        {views.map((view) => (
          <li key={view.id}>
            <Link className="to" href={`${page}${view.query}`} aria-current={view.query === query ? 'page' : undefined}>
              <bdi>{view.name}</bdi>
            </Link>
            <form action={keepViewHere}>
              <input type="hidden" name="page" value={page} />
              <input type="hidden" name="query" value={query} />
              <input type="hidden" name="drop" value={view.id} />
              <button type="submit" className="inline-act" aria-label={`Drop the view ${view.name}`}>
                Drop
              </button>
            </form>
          </li>
        ))}
      </ul>
      <form action={keepViewHere} className="filters">
        <input type="hidden" name="page" value={page} />
        <input type="hidden" name="query" value={query} />
        <Field label="Keep what the list shows now as" name="name" id="view-name" maxLength={60} autoComplete="off" />
        <ActionButton second>Keep</ActionButton>
      </form>
    </details>
  );
}
