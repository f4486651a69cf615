import Link from 'next/link';
import { type Query, questionWith } from './asked-for';

/** Labels of all that the list shows and its other pages hold. */
export function LabelsLink({ path, query }: { path: '/sets' | '/motors'; query: Query }) {
  const question = questionWith(path, query, {}).replace(/^\?/, '&');
  return (
    <p className="below-table screen-only">
      <Link className="to" href={`/labels?list=${path.slice(1)}${question}`}>
        Print labels of this list
      </Link>
    </p>
  );
}
