import type { Motor } from '@/lib/plant/motor';
import { type Finding, toJudge, toRead } from '../finding';

/**
 * The failed motor was of a design that starts with more torque, and the set does not say what it asks: is that needed?
 * Null: it was not, or the candidate starts as hard.
 */
export function higherTorque(failed: Motor | null, candidate: Motor): Finding | null {
  if (failed === null || failed.design === null) return null;
  const had = RANK[failed.design];
  if (had === 0) return null;
  if (failed.lockedRotorPct !== null && candidate.lockedRotorPct !== null)
    if (candidate.lockedRotorPct >= failed.lockedRotorPct) return null;
  const compared = { criterion: 'breakaway', have: candidate.design, need: failed.design, cite: CITE } as const;
  const says = `The failed motor was of design ${failed.design}, which starts with more torque`;
  if (candidate.design === null)
    return toRead(compared, `${says}; this one shows no letter.`, 'Read the design letter on the plate', 2);
  return RANK[candidate.design] >= had
    ? null
    : toJudge(compared, `${says}; this one is ${candidate.design}: does the pump need it?`);
}

/** Locked-rotor torque: MG 10 Table 2-1 (read in one text) for B, C, D; IEC 60034-12 for N and H (from memory). */
const RANK: Record<NonNullable<Motor['design']>, number> = {
  A: 0,
  B: 0,
  E: 0,
  N: 0,
  NE: 0,
  NY: 0,
  NEY: 0,
  C: 1,
  H: 1,
  HE: 1,
  HY: 1,
  HEY: 1,
  D: 2,
};

const CITE = 'NEMA MG 10 Table 2-1 (read in one text); IEC 60034-12 (from memory)';
