import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import type { Missing } from './missing';

/** What is not known, with where it is entered. */
export function MissingLines({ missing }: { missing: readonly Missing[] }) {
  if (missing.length === 0) return null;
  return (
    <section>
      <SectionHead title="Not known" aside="nothing stands in for it" />
      <ul className="lines">
        {missing.map(({ what, where, href }) => (
          <li key={what}>
            <p className="line-name">{what}</p>
            <p className="line-below">
              {href === null ? (
                `Enter it ${where}.`
              ) : (
                <Link className="to" href={href}>
                  <bdi>Enter it {where}</bdi>
                </Link>
              )}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
