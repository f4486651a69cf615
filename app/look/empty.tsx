import type { ReactNode } from 'react';
import { SectionHead } from './section-head';

/** Nothing to show: says so in words of the job, then the nearest miss, then what to do next. */
export function Empty({
  title,
  says,
  nearest,
  next,
  isWholePage,
}: {
  title: string;
  says: ReactNode;
  nearest?: ReactNode;
  next?: readonly { words: string; link: ReactNode }[];
  /** The page says nothing else: this is its heading. */
  isWholePage?: true;
}) {
  return (
    <section>
      {isWholePage ? <h1 className="page">{title}</h1> : <h2 className="page">{title}</h2>}
      <p className="mt-2">{says}</p>
      {nearest !== undefined && <ol className="rank mt-4 border-hairline border-t">{nearest}</ol>}
      {next !== undefined && next.length > 0 && (
        <>
          <SectionHead title="Next" />
          <dl className="kv">
            {next.map(({ words, link }) => (
              <div key={words}>
                <dt>{words}</dt>
                <dd>{link}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </section>
  );
}
