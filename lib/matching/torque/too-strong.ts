import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { failedRowOf } from '../context/driven-load';
import { ratedNmOf } from '../context/rated-nm';
import { type Finding, toJudge, toRead } from '../finding';

/** Can coupling and gear carry what this motor can give? Null when nothing says they could not. */
export function tooStrong(set: PumpSet, { row }: Context): Finding | null {
  const { maxTorqueNm } = set.coupling;
  if (maxTorqueNm !== null) {
    const ratedNm = ratedNmOf(row);
    const compared = { criterion: 'torque', have: ratedNm, need: maxTorqueNm, unit: 'N·m', cite: PRACTICE } as const;
    if (ratedNm === null)
      return toRead(compared, 'Rated torque unknown.', 'Rated power and full-load speed on the motor plate', 5);
    return ratedNm > maxTorqueNm * EXACTLY
      ? toJudge(
          compared,
          `The motor can give ${figure(ratedNm)} N·m, more than the ${figure(maxTorqueNm)} N·m coupling or gear may carry: limit it, or do not fit it.`,
        )
      : null;
  }
  const failedKw = failedRowOf(set)?.kw ?? null;
  if (row.kw === null || failedKw === null || row.kw <= MUCH_STRONGER * failedKw * EXACTLY) return null;
  const compared = { criterion: 'torque', have: row.kw, need: failedKw, unit: 'kW', cite: PRACTICE } as const;
  return toJudge(
    compared,
    `Over ${MUCH_STRONGER} times the failed motor’s ${figure(failedKw)} kW: what coupling, gear and pump shaft may carry is not known.`,
  );
}

const PRACTICE = 'Weakest part of the train: common practice, no source';

const EXACTLY = 1 + 1e-9;
/** A candidate this much stronger asks what gear and coupling carry: common practice, no source. */
const MUCH_STRONGER = 1.5;
