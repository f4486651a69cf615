import Link from 'next/link';
import { labelText } from '@/lib/plant/label-code';
import { labelCodeOf } from '@/lib/register/label-code-of';

/** The code on the label of what a page shows, and the way to print it. */
export function LabelHere({ row }: { row: { id: string; code: string | null } }) {
  const text = labelText(labelCodeOf(row));
  return (
    <p className="pt-3">
      <span className="label">Label</span> <span className="nowrap">{text}</span>{' '}
      <Link className="to screen-only" href={`/labels?code=${text}`}>
        Print its label
      </Link>
    </p>
  );
}
