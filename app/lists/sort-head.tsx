import Link from 'next/link';
import { type ListPath, type Query, questionWith } from './asked-for';

/** The head of a column by which a list can be put in order: once upwards, again downwards. */
export function SortHead({
  path,
  query,
  by,
  now,
  children,
}: {
  path: ListPath;
  query: Query;
  by: string;
  now: { sort: string; isDown: boolean };
  children: string;
}) {
  const isBy = now.sort === by;
  const href = `${path}${questionWith(path, query, { sort: by, down: isBy && !now.isDown ? '1' : null })}`;
  return (
    <th scope="col" aria-sort={isBy ? (now.isDown ? 'descending' : 'ascending') : undefined}>
      <Link className="to" href={href}>
        {children}
        {isBy && <span aria-hidden="true">{now.isDown ? ' ↓' : ' ↑'}</span>}
      </Link>
    </th>
  );
}
