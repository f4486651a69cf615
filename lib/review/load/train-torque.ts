import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import { tooStrong } from '@/lib/matching/torque/too-strong';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';

/**
 * Can the motor give more torque than coupling or gear may carry? Rated torque in N·m at the motor's shaft against the
 * limit told. Where the duty alone is beyond it, that is told. Not asked where no limit is told.
 */
export function trainTorque({ set, context }: ReviewCase): ReviewFinding | null {
  const { maxTorqueNm } = set.coupling;
  if (maxTorqueNm === null) return null;
  const { row } = context;
  const { torqueNm, losslessNm } = drivenLoadOf(set);
  const loadNm = torqueNm ?? losslessNm;
  const about = {
    rule: 'train-torque',
    need: maxTorqueNm,
    unit: 'N·m',
    figures: { kw: row.kw, rpm: row.rpm, maxTorqueNm, loadNm },
  } as const;
  const limit = `coupling or gear may carry ${figure(maxTorqueNm)} N·m`;
  if (loadNm !== null && loadNm > maxTorqueNm)
    return raised({
      ...about,
      ...{ urgency: 'at-once', have: loadNm, cite: TORQUE },
      says: `The duty alone asks ${figure(loadNm)} N·m of the motor; ${limit}.`,
    });
  const found = tooStrong(set, context);
  if (found === null) return null;
  if (typeof found.have !== 'number')
    return raised({
      ...about,
      urgency: 'look',
      have: null,
      says: `${found.says} Of that ${limit}.`,
      cite: found.cite,
      reading: found.reading,
    });
  const sum = row.kw !== null && row.rpm !== null ? `9550 × ${figure(row.kw)} kW / ${figure(row.rpm, 0)} rpm = ` : '';
  return raised({
    ...about,
    ...{ urgency: 'plan', have: found.have, cite: `${TORQUE}; ${found.cite}` },
    says: `${sum}${figure(found.have)} N·m at full load; ${limit}.`,
  });
}

const TORQUE = 'Torque = 9550 × kW / rpm (read in two texts)';
