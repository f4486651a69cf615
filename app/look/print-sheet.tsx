import type { ReactNode } from 'react';
import { Mark } from './mark';
import { hoursText, VERDICT_WORDS, type Verdict } from './words';

export interface Step {
  /** Differs from the other steps of its list. */
  words: string;
  /** A figure at the right. */
  value?: string;
  /** A line to write on, with the unit after it. */
  blank?: string;
}

/** A sheet for paper, A4 or Letter: a border, what is to be done with boxes to tick, and the title block at the bottom. */
export function PrintSheet({
  kind,
  title,
  aside,
  cells,
  signs = [],
  children,
}: {
  kind: string;
  title: ReactNode;
  aside?: ReactNode;
  /** Ten at most, five a row. */
  cells: readonly { label: string; value: ReactNode }[];
  /** What is signed for, a line each, under the title block. */
  signs?: readonly string[];
  children: ReactNode;
}) {
  return (
    <article className="job">
      <div className="border">
        <header className="flex items-start justify-between gap-4">
          <div>
            <p className="label">{kind}</p>
            <h1>{title}</h1>
          </div>
          {aside !== undefined && <p className="label text-right">{aside}</p>}
        </header>
        {children}
        <dl className="closing">
          {cells.map(({ label, value }) => (
            <div key={label}>
              <dt className="label">{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        {signs.length > 0 && (
          <div className="signatures">
            {signs.map((sign) => (
              <p key={sign}>
                <span className="label">{sign}</span>
                <span className="blank" />
              </p>
            ))}
          </div>
        )}
      </div>
    </article>
  );
}

export function PrintVerdict({ verdict, hours, says }: { verdict: Verdict; hours: number | null; says: ReactNode }) {
  return (
    <div className="verdict-short">
      <Mark verdict={verdict} />
      <div>
        <p>
          <b>
            {VERDICT_WORDS[verdict]}
            {hours !== null && `, ${hoursText(hours)}`}
          </b>
        </p>
        <p>{says}</p>
      </div>
    </div>
  );
}

export function Steps({ title, steps }: { title: string; steps: readonly Step[] }) {
  return (
    <section>
      <h2>{title}</h2>
      <ol className="steps">
        {steps.map(({ words, value, blank }) => (
          <li key={words}>
            <span>{words}</span>
            <span className="value">
              {value}
              {blank !== undefined && (
                <>
                  <span className="blank" /> {blank}
                </>
              )}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
