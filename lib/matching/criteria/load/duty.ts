import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Finding, note, ok, toJudge } from '../../finding';

/**
 * Is the motor rated to run without a break? A set is taken to ask S1. Not asked when the plate shows no duty: a plate
 * must show one only where it is not S1.
 */
export function duty({ failed }: PumpSet, candidate: Motor): Finding | null {
  if (candidate.duty === null) return null;
  const compared = { criterion: 'duty', have: candidate.duty, need: 'S1', cite: CITE } as const;
  if (candidate.duty === 'S1') return ok(compared, 'Rated for continuous running.');
  if (failed?.duty === candidate.duty) return note(compared, `Rated for ${candidate.duty}, as the failed motor was.`);
  return toJudge(
    compared,
    `Rated for ${candidate.duty} only: its power holds for that duty cycle, not for continuous running.`,
  );
}

const CITE = 'IEC 60034-1 4.2 and 10.2 (from memory); NEMA MG 1 1.40';
