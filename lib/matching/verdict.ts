import { type Finding, type Grade, isWorse } from './finding';

/** Best first. */
export const VERDICTS = ['straight-swap', 'swap-with-work', 'check-first', 'unsuitable'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** The sum of the findings for one candidate: the worst of them decides. */
export function verdictOf(findings: readonly Pick<Finding, 'grade'>[]): Verdict {
  let worst: Grade = 'ok';
  for (const { grade } of findings) if (isWorse(grade, worst)) worst = grade;
  return VERDICT_OF[worst];
}

const VERDICT_OF: Record<Grade, Verdict> = {
  ok: 'straight-swap',
  note: 'straight-swap',
  work: 'swap-with-work',
  check: 'check-first',
  block: 'unsuitable',
};
