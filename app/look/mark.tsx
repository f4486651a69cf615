import type { ReactNode } from 'react';
import { VERDICT_WORDS, type Verdict } from './words';

/**
 * A verdict as a foot outline: its holes tell what the motor's do. Stands beside the words; where it stands alone it
 * must be `named`.
 */
export function Mark({
  verdict,
  size,
  named,
}: {
  verdict: Verdict;
  size?: 'large' | 'middle' | 'small';
  named?: true;
}) {
  const dashes = verdict === 'unsuitable' ? { strokeDasharray: '7.4 4.6', strokeDashoffset: 3.7 } : {};
  return (
    <svg
      className={size ? `mark ${size}` : 'mark'}
      viewBox="0 0 48 48"
      fill="none"
      stroke="currentColor"
      role="img"
      aria-label={VERDICT_WORDS[verdict]}
      aria-hidden={!named}
    >
      <rect x="2.5" y="7" width="43" height="34" rx="4" strokeWidth="3" {...dashes} />
      {HOLES[verdict]}
    </svg>
  );
}

const filled = (x: number, y: number, r: number) => (
  <circle key={`${x} ${y}`} cx={x} cy={y} r={r} fill="currentColor" stroke="none" />
);
const open = (x: number, y: number) => <circle key={`${x} ${y}`} cx={x} cy={y} r="3.4" strokeWidth="2.2" />;

const HOLES: Record<Verdict, ReactNode> = {
  'straight-swap': [filled(11.5, 15.3, 4.3), filled(26.5, 15.3, 4.3), filled(11.5, 32.7, 4.3), filled(26.5, 32.7, 4.3)],
  'swap-with-work': (
    <>
      {[open(11.5, 15.3), open(26.5, 15.3), open(11.5, 32.7), open(26.5, 32.7)]}
      <path d="M7.5 24H32.5M42 18.2H32.5V29.8H42" strokeWidth="3.2" />
    </>
  ),
  'check-first': (
    <>
      {[filled(11.5, 15.3, 4.3), filled(11.5, 32.7, 4.3), filled(21.5, 32.7, 4.3)]}
      <path d="M25.8 19c0-4.2 2.6-6.4 6.3-6.4 3.6 0 6.2 2.2 6.2 5.7 0 4.9-6.1 5-6.1 10.6" strokeWidth="3.6" />
      <path d="M30.1 31.8h4.2v4.4h-4.2z" fill="currentColor" stroke="none" />
    </>
  ),
  unsuitable: (
    <>
      <path d="M10 10.7v9.2M26 10.7v9.2M10 28.1v9.2M26 28.1v9.2" strokeWidth="2.6" />
      {[filled(17.5, 15.3, 3.3), filled(33.5, 15.3, 3.3), filled(17.5, 32.7, 3.3), filled(33.5, 32.7, 3.3)]}
    </>
  ),
};
