import Link from 'next/link';
import type { NearTag } from '@/lib/register/queries/nearest-tags';
import { SectionHead } from '../look/section-head';
import { Tag } from '../look/tag';
import { setPath } from '../paths';

/** No such tag: the tags most like it, each a link. */
export function NearTags({ typed, nearest }: { typed: string; nearest: readonly NearTag[] }) {
  return (
    <section>
      <SectionHead title={nearest.length === 0 ? 'No such tag' : 'No such tag: did you mean'} />
      <p className="pt-3">
        No set has the tag <Tag>{typed}</Tag>
        {nearest.length === 0
          ? ', and none is like it. Look at the plate on the pump, or find it by what it serves.'
          : '.'}
      </p>
      {nearest.length > 0 && (
        <ul className="lines mt-2">
          {nearest.map(({ setId, tag, how, errors }) => (
            <li key={setId}>
              <p className="line-name">
                <Link href={setPath(tag)}>
                  <bdi>{tag}</bdi>
                </Link>
              </p>
              <span className="line-aside label">{howText(how, errors)}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function howText(how: NearTag['how'], errors: number): string {
  switch (how) {
    case 'tag':
      return 'the same letters';
    case 'look-alike':
      return 'letters that look alike';
    case 'begins':
      return 'begins so';
    case 'near':
      return errors === 1 ? 'one letter differs' : `${errors} letters differ`;
  }
}
