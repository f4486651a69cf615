import Link from 'next/link';
import { type ListPath, type Query, questionWith } from './asked-for';

/** Which part of a list is shown, and the ways to the next. */
export function PageLinks({
  path,
  query,
  page,
  perPage,
  shown,
  all,
  what,
}: {
  path: ListPath;
  query: Query;
  page: number;
  perPage: number;
  shown: number;
  all: number;
  what: string;
}) {
  const lastPage = Math.max(1, Math.ceil(all / perPage));
  const first = (page - 1) * perPage + 1;
  const to = (other: number) => `${path}${questionWith(path, query, { page: other === 1 ? null : String(other) })}`;
  return (
    <p className="below-table label">
      {shown > 0 && (
        <span>
          {what} {first} to {first + shown - 1} of {all}
        </span>
      )}
      <span className="screen-only">
        {page > 1 && (
          <Link className="to" href={to(Math.min(page - 1, lastPage))}>
            {page > lastPage ? 'Back to its end' : `Previous ${perPage}`}
          </Link>
        )}{' '}
        {first + shown - 1 < all && shown > 0 && (
          <Link className="to" href={to(page + 1)}>
            Next {perPage}
          </Link>
        )}
      </span>
    </p>
  );
}
