import Link from 'next/link';
import type { OfferedMotor } from '@/lib/register/queries/shelf-motors';
import { untorn } from '../look/untorn';
import { motorPath } from '../paths';
import { ratingText } from '../rating-text';

/** Motors of one store as lines: number, plate in short, shelf and condition. */
export function ShelfLines({ motors }: { motors: readonly OfferedMotor[] }) {
  const sorted = motors.toSorted((a, b) => compare(a.whereabouts.shelf, b.whereabouts.shelf));
  return (
    <ul className="lines">
      {sorted.map(({ motor, whereabouts, condition, maker }) => (
        <li key={motor.id}>
          <p className="line-name">
            <Link href={motorPath(motor.id)}>
              <bdi>{motor.id}</bdi>
            </Link>
          </p>
          <span className="line-aside">
            {whereabouts.shelf !== null && (
              <>
                shelf <bdi>{whereabouts.shelf}</bdi>
              </>
            )}
          </span>
          <p className="line-below">
            {[untorn(ratingText(motor)), maker, condition].filter((part) => part !== null).join(', ')}
          </p>
        </li>
      ))}
    </ul>
  );
}

const compare = (a: string | null, b: string | null) =>
  (a ?? '\uffff').localeCompare(b ?? '\uffff', 'en', { numeric: true });
