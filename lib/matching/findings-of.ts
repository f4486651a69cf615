import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from './context';
import { criteria } from './criteria';
import type { Finding } from './finding';

/** Every answer for one candidate, in the table's order; questions not asked leave nothing. */
export function findingsOf(set: PumpSet, candidate: Motor, context: Context): Finding[] {
  const findings: Finding[] = [];
  for (const ask of ASKED) {
    const finding = ask(set, candidate, context);
    if (finding !== null) findings.push(finding);
  }
  return findings;
}

const ASKED = criteria.map(([, ask]) => ask);
