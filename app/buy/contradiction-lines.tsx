import { SectionHead } from '@/app/look/section-head';
import type { Contradiction } from '@/lib/purchase/group/contradiction';

/** What no one motor can be for all of the sets, with what each asks. */
export function ContradictionLines({ contradictions }: { contradictions: readonly Contradiction[] }) {
  if (contradictions.length === 0) return null;
  return (
    <section>
      <SectionHead title="What no one motor can be" aside={String(contradictions.length)} />
      <ul className="lines">
        {contradictions.map(({ id, label, askedAs, bySet }) => (
          <li key={id} className="urgent">
            <p className="line-name">{label}</p>
            <span className="line-aside label">
              asked as <bdi>{askedAs}</bdi>
            </span>
            <p className="line-below">
              {bySet.map(({ tag, value }) => (
                <span key={tag} className="block">
                  <bdi>{tag}</bdi>: {value === null ? 'not told' : <bdi>{value}</bdi>}
                </span>
              ))}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
