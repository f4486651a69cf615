import type { Context } from '@/lib/matching/context';
import { PHASE_SHARE } from '@/lib/matching/starting/phase-share';
import { startOf } from '@/lib/matching/starting/start-of';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';

export const OVERLOAD_CITE = 'NEC 430.6(A): overload by the plate (read in two texts)';

/** What the overload is set to for this motor: the plate's amps where it stands. */
export interface OverloadSetting {
  /** In A; null where the plate's amps here, or where the overload stands, is not known. */
  settingA: number | null;
  /** Where the overload stands: in the line, in a leg of the delta, or nobody told. */
  where: 'line' | 'phase' | 'unknown';
  /** The plate's amps in the line. */
  lineA: number | null;
  /** 0.58 of them, in a leg of the delta. */
  phaseA: number | null;
  /** Whether the dial reaches the setting; null where either is not known. */
  isInDial: boolean | null;
}

/** As the full-load-current finding has it: in the line, or 0.58 of it in a leg of a star-delta starter. */
export function overloadSettingOf(set: PumpSet, motor: Motor, context: Context): OverloadSetting {
  const lineA = context.row.amps;
  const phaseA = lineA === null ? null : lineA * PHASE_SHARE;
  const where = whereOf(set, motor, context);
  const settingA = where === 'unknown' ? null : where === 'phase' ? phaseA : lineA;
  return { settingA, where, lineA, phaseA, isInDial: settingA === null ? null : isInDial(settingA, set) };
}

function whereOf(set: PumpSet, motor: Motor, context: Context): OverloadSetting['where'] {
  if (startOf(set, motor, context) !== 'star-delta') return 'line';
  return set.supply.overloadIn ?? 'unknown';
}

function isInDial(amps: number, { supply: { overloadMinA: min, overloadMaxA: max } }: PumpSet): boolean | null {
  if ((max !== null && amps > max) || (min !== null && amps < min)) return false;
  return min === null || max === null ? null : true;
}
