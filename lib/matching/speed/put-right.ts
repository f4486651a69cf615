import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { block, type Compared, type Finding, needsWork, toJudge, type Work } from '../finding';

/** A new sheave puts the speed right, unless the set says it cannot be changed. */
export const bySheave = ({ coupling }: PumpSet, compared: Compared, says: string, work: Work): Finding =>
  coupling.sheave.changeable === false
    ? block(compared, `${says} The sheave cannot be changed.`)
    : needsWork(compared, `${says} A new motor sheave puts it right.`, work);

/** Another frequency puts it right: work, unless it lies where the drive does not go or torque falls. */
export function byFrequency(
  { supply }: PumpSet,
  compared: Compared,
  says: string,
  work: Work,
  hertz: number,
  baseHertz: number | null,
): Finding {
  const { minHertz = null, maxHertz = null } = supply.drive ?? {};
  const putsRight = `${says} The frequency that puts it right, ${figure(hertz, 1)} Hz, is`;
  if (maxHertz !== null && hertz > maxHertz * EXACTLY)
    return toJudge(compared, `${putsRight} above the drive’s limit of ${maxHertz} Hz.`, work);
  if (minHertz !== null && hertz < minHertz / EXACTLY)
    return toJudge(compared, `${putsRight} below the drive’s limit of ${minHertz} Hz.`, work);
  if (baseHertz !== null && hertz > baseHertz * EXACTLY)
    return toJudge(compared, `${putsRight} above base: torque falls there.`, work);
  return needsWork(compared, `${says} Another frequency puts it right.`, work);
}

const EXACTLY = 1 + 1e-9;
