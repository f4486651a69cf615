import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import { ratedNmOf } from '@/lib/matching/context/rated-nm';
import { figure } from '@/lib/units/figure';
import type { ReviewCase } from '../review-case';
import type { Change } from './cure';

/** A coupling or gear that carries what the motor gives, and what the duty asks. */
export function carryingTrain({ set, context }: ReviewCase): Change[] {
  const { torqueNm, losslessNm } = drivenLoadOf(set);
  const ratedNm = ratedNmOf(context.row);
  if (ratedNm === null) return [];
  const maxTorqueNm = Math.ceil(Math.max(ratedNm, torqueNm ?? losslessNm ?? ratedNm));
  const part = set.coupling.type === 'gear' ? 'gear' : set.coupling.type === 'belt' ? 'belt' : 'coupling';
  return [
    {
      what: `Fit a ${part} that carries at least ${figure(maxTorqueNm, 0)} N·m at the motor’s shaft, its own service factor besides`,
      hours: null,
      set: { ...set, coupling: { ...set.coupling, maxTorqueNm } },
    },
  ];
}
