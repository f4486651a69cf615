import { ALIGNMENT_CITE, alignmentTolerance, SOFT_FOOT_MM } from '@/lib/standards/alignment-tolerance';
import { figure } from '@/lib/units/figure';
import type { Predicted } from '../predicted';
import { found, type ReadingFinding } from '../reading-finding';

/** Do all feet stand? In mm that a foot lifts when its bolt is loosened. */
export function softFootFinding(mm: number): ReadingFinding {
  const compared = { about: 'soft-foot', have: mm, need: SOFT_FOOT_MM, unit: 'mm', cite: ALIGNMENT_CITE } as const;
  return mm > SOFT_FOOT_MM
    ? found(
        'check',
        compared,
        `A foot lifts by more than ${figure(SOFT_FOOT_MM)} mm: shim that foot, then align again.`,
      )
    : found('ok', compared, 'All feet stand.');
}

/** Are the shafts in line, at the speed they turn? */
export const offsetFinding = (mm: number, predicted: Predicted): ReadingFinding =>
  inLine('offset', mm, 'mm', predicted, 'offsetMm');

/** Are the shafts parallel? The difference of the gap for each 100 mm of the coupling's diameter. */
export const gapFinding = (mm: number, predicted: Predicted): ReadingFinding =>
  inLine('gap', mm, 'mm per 100 mm', predicted, 'gapMmPer100');

function inLine(
  about: 'offset' | 'gap',
  have: number,
  unit: string,
  { motorRpm }: Predicted,
  of: 'offsetMm' | 'gapMmPer100',
): ReadingFinding {
  const tolerance = motorRpm === null ? null : alignmentTolerance(motorRpm);
  const need = tolerance === null ? null : tolerance[of];
  const compared = { about, have, need, unit, cite: ALIGNMENT_CITE };
  if (need === null)
    return found(
      'check',
      compared,
      'The speed, and with it what the shafts may be out by, is not known: go by the coupling maker’s figures.',
    );
  return have > need
    ? found('check', compared, `More than ${figure(need)} ${unit}: align again.`)
    : found('ok', compared, 'Within what is usual at this speed.');
}
