import type { PumpSet } from '@/lib/plant/set';
import { torqueNmOf } from '@/lib/units/torque';
import { type RatingRow, ratingRowOf } from './rating-row';

/** What the pump asks at the motor's shaft. A fact of the set alone: kept per set. */
export interface DrivenLoad {
  /** Load torque follows speed to this power: 0 constant, 2 quadratic; null when the kind is not told. */
  exponent: 0 | 2 | null;
  /** Motor rpm over pump rpm. */
  ratio: number | null;
  /** Of gear or belt, per unit; null for a gear (or an untold coupling) without one. */
  efficiency: number | null;
  /** Motor rpm at which the load is told. */
  motorRpm: number | null;
  /** Pump rpm at which the load is told. */
  pumpRpm: number | null;
  shaftKw: number | null;
  /** Motor load there; null while the transmission's efficiency is unknown. */
  motorKw: number | null;
  /** Torque at the motor there with a lossless transmission: the least it can be. */
  losslessNm: number | null;
  /** As `losslessNm`, with the losses; null while they are unknown. */
  torqueNm: number | null;
  /** What had to be taken from the failed motor or for granted; null when nothing was. */
  assumes: string | null;
}

/** A V-belt well kept: common practice, no source. */
const BELT_EFFICIENCY = 0.95;

const kept = new WeakMap<PumpSet, DrivenLoad>();

export function drivenLoadOf(set: PumpSet): DrivenLoad {
  const known = kept.get(set);
  if (known !== undefined) return known;
  const load = workOut(set);
  kept.set(set, load);
  return load;
}

const failedRows = new WeakMap<PumpSet, RatingRow>();

/** The failed motor's own rating row at this supply; null when there is no plate. */
export function failedRowOf(set: PumpSet): RatingRow | null {
  if (set.failed === null) return null;
  const known = failedRows.get(set);
  if (known !== undefined) return known;
  const row = ratingRowOf(set, set.failed);
  failedRows.set(set, row);
  return row;
}

function workOut(set: PumpSet): DrivenLoad {
  const { kind, shaftKw, atPumpRpm } = set.load;
  const efficiency = efficiencyOf(set);
  const { ratio, motorRpm, assumes } = speedsOf(set);
  const losslessNm = shaftKw === null || motorRpm === null ? null : torqueNmOf(shaftKw, motorRpm);
  return {
    exponent: kind === null ? null : kind === 'quadratic' ? 2 : 0,
    ratio,
    efficiency,
    motorRpm,
    pumpRpm: atPumpRpm ?? (ratio === null || motorRpm === null ? null : motorRpm / ratio),
    shaftKw,
    motorKw: shaftKw === null || efficiency === null ? null : shaftKw / efficiency,
    losslessNm,
    torqueNm: losslessNm === null || efficiency === null ? null : losslessNm / efficiency,
    assumes: efficiency !== null ? assumes : assumes === null ? LOSSLESS : `${assumes}; ${LOSSLESS}`,
  };
}

const LOSSLESS = 'the gear is taken as lossless for the speed alone';

function efficiencyOf({ coupling }: PumpSet): number | null {
  if (coupling.efficiencyPct !== null) return coupling.efficiencyPct / 100;
  switch (coupling.type) {
    case 'coupling':
    case 'close-coupled':
      return 1;
    case 'belt':
      return BELT_EFFICIENCY;
    case 'gear':
    case null:
      return null;
  }
}

function speedsOf(set: PumpSet): Pick<DrivenLoad, 'ratio' | 'motorRpm' | 'assumes'> {
  const { coupling, load } = set;
  // Shaft to shaft there is nothing to change the speed: the ratio is 1 by construction.
  const isDirect = coupling.type === 'coupling' || coupling.type === 'close-coupled';
  const ratio = coupling.ratio ?? (isDirect ? 1 : null);
  if (load.atPumpRpm !== null && ratio !== null) return { ratio, motorRpm: load.atPumpRpm * ratio, assumes: null };

  // A drive could have held the failed motor at any speed; on the mains it ran at its plate's, near enough.
  const failedRpm = set.supply.start === 'drive' ? null : (failedRowOf(set)?.rpm ?? null);
  if (failedRpm === null) return { ratio, motorRpm: null, assumes: null };
  if (load.atPumpRpm === null)
    return { ratio, motorRpm: failedRpm, assumes: 'pump speed taken from the failed motor’s plate' };
  return {
    ratio: failedRpm / load.atPumpRpm,
    motorRpm: failedRpm,
    assumes: 'ratio taken from the failed motor’s plate',
  };
}
