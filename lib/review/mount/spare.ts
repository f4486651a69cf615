import { type ReviewFinding, raised } from '../finding';
import { hardToReplace } from '../hard-to-replace';
import type { ReviewCase } from '../review-case';

/**
 * Has a motor that no standard one is the like of a spare on the shelves? Not asked where nobody has counted what could go
 * in, nor of a motor that is made today.
 */
export function spare({ motor, known: { spares } }: ReviewCase): ReviewFinding | null {
  const hard = hardToReplace(motor);
  if (hard === null || spares === null || spares > 0) return null;
  return raised({
    ...{ rule: 'spare', urgency: 'plan', have: spares, need: 1, unit: null, cite: hard.cite },
    says: `${hard.says} No motor on the shelves could go in for it.`,
    figures: { frame: motor.frame, shaftMm: motor.measured.shaftDiameterMm },
  });
}
