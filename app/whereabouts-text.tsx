import Link from 'next/link';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import { Tag } from './look/tag';
import { setPath } from './paths';

/** Where a motor is, to walk to. */
export function WhereaboutsText({ at, isLink }: { at: Whereabouts; isLink?: true }) {
  switch (at.place) {
    case 'on-shelf':
      return (
        <bdi>
          {at.store ?? 'store not told'}, shelf {at.shelf ?? 'not told'}
        </bdi>
      );
    case 'in-set':
      if (at.setTag === null) return <>in a set</>;
      return (
        <>
          in{' '}
          {isLink ? (
            <Link className="to" href={setPath(at.setTag)}>
              <Tag>{at.setTag}</Tag>
            </Link>
          ) : (
            <Tag>{at.setTag}</Tag>
          )}
        </>
      );
    case 'at-repair':
      return <>at repair</>;
    case 'on-order':
      return <>on order</>;
    case 'scrapped':
      return <>scrapped</>;
  }
}
