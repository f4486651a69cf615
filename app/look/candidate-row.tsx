import Link from 'next/link';
import type { ReactNode } from 'react';
import type { Grade } from '@/lib/matching/finding';
import { Glyph } from './glyph';
import { Hours } from './hours';
import { Mark } from './mark';
import { VERDICT_WORDS, type Verdict } from './words';

export interface Reason {
  grade: Grade;
  text: string;
  /** "0 h 30" or "2 min". */
  time: string | null;
}

export interface CandidateRowProps {
  href: string;
  /** Plant number, or the frame and rating of a motor to buy. */
  name: string;
  verdict: Verdict;
  hours: number | null;
  frame: string | null;
  reasons: readonly Reason[];
  /** Where to walk to: it stands in ink. */
  where: ReactNode;
  /** Operating point and the like: "4.6 kW", "352 rpm", "load 71 %". */
  facts: readonly string[];
  /** Why it stands above the next. */
  why: ReactNode | null;
}

/** A name this long takes the row for itself. */
const LONG = 14;

/** One row of the ranked list; the order is the rank. At most two deciding findings are shown. */
export function CandidateRow({ href, name, verdict, hours, frame, reasons, where, facts, why }: CandidateRowProps) {
  return (
    <li>
      <div className={name.length > LONG ? 'cand long' : 'cand'}>
        <Mark verdict={verdict} />
        <h3 className="no">
          <Link href={href}>
            <bdi>{name}</bdi>
          </Link>
        </h3>
        <Hours hours={hours} />
        <span className="words">{VERDICT_WORDS[verdict]}</span>
        <span className="frame dim">{frame !== null && <bdi>{frame}</bdi>}</span>
        <div className="below">
          {reasons.length > 0 && (
            <ul className="reasons">
              {reasons.slice(0, 2).map(({ grade, text, time }) => (
                <li key={text}>
                  <Glyph grade={grade} />
                  <span>{text}</span>
                  {time !== null && <span className="dim nowrap">{time}</span>}
                </li>
              ))}
            </ul>
          )}
          <p className="where">{where}</p>
          {facts.length > 0 && (
            <p className="facts dim">
              {facts.map((fact, i) => (
                <span key={fact}>
                  {i > 0 && ' · '}
                  <span className="nowrap">{fact}</span>
                </span>
              ))}
            </p>
          )}
          {why !== null && <p className="why label">{why}</p>}
        </div>
      </div>
    </li>
  );
}

/** The list the rows stand in. */
export function CandidateList({ children }: { children: ReactNode }) {
  return <ol className="rank">{children}</ol>;
}
