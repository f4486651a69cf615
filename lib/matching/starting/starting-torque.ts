import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { minimumTorque, type TorqueKind } from '@/lib/standards/minimum-torque';
import type { RatingRow } from '../context/rating-row';
import { lockedRotorCurrent } from './inrush';
import type { Start } from './start-of';

/** What a motor can pull with at standstill, started as the set starts it. N·m at its shaft. */
export interface StartingTorque {
  /** Null: cannot be told; `missing` says which reading would tell it. */
  nm: number | null;
  /** More than this no start here gives, where `nm` is unknown; null when even that is. */
  atMostNm: number | null;
  /** True when it rests on a standard's least or on what is usual, not on figures of this motor. */
  isBound: boolean;
  cite: string;
  missing: { says: string; what: string; minutes: number } | null;
}

export function startingTorque({ supply }: PumpSet, motor: Motor, row: RatingRow, start: Start | null): StartingTorque {
  const ratedNm = row.fullLoadTorqueNm;
  if (ratedNm === null) return untold(null, RATING);
  if (start === 'drive') return onDrive(supply.drive, motor, row, ratedNm);
  if (row.phi === null) return untold(null, VOLTS);

  const locked = torqueShare('locked-rotor', motor, row);
  if (locked === null) return untold(null, LOCKED_ROTOR);
  const direct: StartingTorque = {
    nm: ratedNm * row.phi * row.phi * locked.share,
    atMostNm: null,
    isBound: locked.isBound,
    cite: locked.cite,
    missing: null,
  };
  switch (start) {
    case 'direct':
      return direct;
    case 'star-delta':
      return reduced(direct, STAR, 'a third of it in star (read in two texts)');
    case 'part-winding':
      return reduced(direct, PART_WINDING, '0.48 of it on one winding (from memory)');
    case 'soft':
      return onSoftStarter(supply.softStartLimitPct, motor, row, direct);
    case null:
      return untold(direct.nm, STARTER);
  }
}

/** Per unit of rated torque: as plated, else the design letter's least; null where neither tells. */
export function torqueShare(
  kind: TorqueKind,
  motor: Motor,
  row: RatingRow,
): { share: number; isBound: boolean; cite: string } | null {
  const plated = kind === 'locked-rotor' ? motor.lockedRotorPct : kind === 'breakdown' ? motor.breakdownPct : null;
  if (plated !== null) return { share: plated / 100, isBound: false, cite: 'as plated' };
  const kw = row.plate?.kw ?? null;
  const poles = polesOf(motor, row);
  if (motor.design === null || kw === null || poles === null || !isCage(motor)) return null;
  const least = minimumTorque(kind, motor.design, kw, poles);
  return least === null ? null : { share: least.pct / 100, isBound: true, cite: least.cite };
}

/** A design letter of the tables belongs to a three-phase cage motor. */
const isCage = ({ kind, phases }: Motor) => phases !== 1 && (kind === 'cage' || kind === 'two-speed' || kind === null);

const polesOf = ({ kind, poles }: Motor, { synchronousRpm, hertz }: RatingRow): number | null => {
  if (poles !== null && kind !== 'two-speed') return poles;
  return synchronousRpm === null || hertz === null ? poles : Math.round((120 * hertz) / synchronousRpm);
};

const STAR = 1 / 3;
const PART_WINDING = 0.48;

const reduced = (direct: StartingTorque, share: number, why: string): StartingTorque => ({
  ...direct,
  nm: direct.nm === null ? null : direct.nm * share,
  cite: `${direct.cite}; ${why}`,
});

/** Torque falls with the square of the current: × (limit / locked-rotor current)², never above a direct start. */
function onSoftStarter(limitPct: number | null, motor: Motor, row: RatingRow, direct: StartingTorque): StartingTorque {
  if (limitPct === null) return untold(direct.nm, LIMIT);
  const locked = lockedRotorCurrent(motor, row);
  if (locked === null || row.amps === null) return untold(direct.nm, CURRENT);
  const share = Math.min(1, (row.amps * limitPct) / 100 / locked.amps);
  const cite = `${direct.cite}; × (limit / locked-rotor current)² (read in one text); ${locked.cite}`;
  return { ...direct, nm: direct.nm === null ? null : direct.nm * share * share, isBound: true, cite };
}

/** The lesser of what the drive's current gives and what the motor can pull out with. */
function onDrive(drive: PumpSet['supply']['drive'], motor: Motor, row: RatingRow, ratedNm: number): StartingTorque {
  const { ratedA = null, overloadPct = null } = drive ?? {};
  const byDrive =
    ratedA === null || overloadPct === null || row.amps === null
      ? null
      : (ratedNm * overloadPct * ratedA) / (100 * row.amps);
  const breakdown = torqueShare('breakdown', motor, row);
  const byMotor = breakdown === null ? null : ratedNm * breakdown.share * SHARE_OF_BREAKDOWN;
  if (byDrive === null)
    return untold(byMotor, ratedA === null ? DRIVE_AMPS : overloadPct === null ? OVERLOAD : PLATE_AMPS);
  if (breakdown === null || byMotor === null) return untold(byDrive, BREAKDOWN);
  const isByDrive = byDrive <= byMotor;
  return {
    nm: isByDrive ? byDrive : byMotor,
    atMostNm: null,
    isBound: !isByDrive && breakdown.isBound,
    cite: isByDrive ? 'Torque follows current: common practice, no source' : `0.8 of breakdown, ${breakdown.cite}`,
    missing: null,
  };
}

/** Margin to pull-out on a drive: common practice, no source. */
const SHARE_OF_BREAKDOWN = 0.8;

const untold = (atMostNm: number | null, missing: StartingTorque['missing']): StartingTorque => ({
  nm: null,
  atMostNm,
  isBound: true,
  cite: 'common practice, no source',
  missing,
});

const RATING = {
  says: 'Rated torque unknown, and so what it starts with.',
  what: 'Rated power and full-load speed on the motor plate',
  minutes: 5,
};
const VOLTS = {
  says: 'Voltage unknown, and so the torque at the start.',
  what: 'Measure the voltage between the lines at the starter, and read the volts on the plate',
  minutes: 10,
};
const LOCKED_ROTOR = {
  says: 'Locked-rotor torque unknown: no figure on the plate, and no table for its design letter.',
  what: 'Design letter on the plate, or locked-rotor torque in the maker’s sheet',
  minutes: 10,
};
const STARTER = {
  says: 'How this set is started is unknown.',
  what: 'Look in the starter: direct, star-delta, soft or drive',
  minutes: 5,
};
const LIMIT = {
  says: 'The current limit of the soft starter is unknown.',
  what: 'Read the current limit set in the soft starter',
  minutes: 5,
};
const CURRENT = {
  says: 'Locked-rotor current unknown, and so what the limited current gives.',
  what: 'Read code letter, design letter and amps on the plate',
  minutes: 2,
};
const DRIVE_AMPS = { says: 'Rated amps of the drive unknown.', what: 'Read the rated amps on the drive', minutes: 5 };
const OVERLOAD = {
  says: 'Overload of the drive unknown.',
  what: 'Read the overload rating of the drive: plate or manual',
  minutes: 10,
};
const PLATE_AMPS = { says: 'Plate amps unknown.', what: 'Read the amps at this voltage on the plate', minutes: 2 };
const BREAKDOWN = {
  says: 'Breakdown torque unknown.',
  what: 'Design letter on the plate, or breakdown torque in the maker’s sheet',
  minutes: 10,
};
