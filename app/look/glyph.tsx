import type { ReactNode } from 'react';
import type { Grade } from '@/lib/matching/finding';
import { GRADE_WORDS } from './words';

/** A grade as one corner of the foot with one hole. It carries its own name. */
export function Glyph({ grade }: { grade: Grade }) {
  return (
    <svg
      className="glyph"
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      role="img"
      aria-label={GRADE_WORDS[grade]}
    >
      <path d="M3 21.5V3h18.5" strokeWidth="1.8" />
      {INSIDE[grade]}
    </svg>
  );
}

const hole = (cx: number, cy: number, r: number) => <circle cx={cx} cy={cy} r={r} fill="currentColor" stroke="none" />;

const INSIDE: Record<Grade, ReactNode> = {
  ok: hole(13.5, 13.5, 4.8),
  note: (
    <>
      {hole(9.8, 15.8, 3.4)}
      <path d="M9.8 15.8 15.6 9.5H22.5" strokeWidth="1.9" />
    </>
  ),
  work: (
    <>
      <path d="M6.5 13.5H13M22 8.5H13V18.5H22" strokeWidth="2.5" />
      {hole(19, 13.5, 1.9)}
    </>
  ),
  check: (
    <>
      <path d="M9.2 11.3c0-3 2-4.7 4.6-4.7s4.5 1.6 4.5 4.1c0 3.6-4.4 3.6-4.4 7" strokeWidth="2.5" />
      <path d="M12.3 19.4h3.2v3.2h-3.2z" fill="currentColor" stroke="none" />
    </>
  ),
  block: (
    <>
      <path d="M9.5 7.5v12" strokeWidth="3" />
      {hole(17.8, 13.5, 3.9)}
    </>
  ),
};
