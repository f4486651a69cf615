import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { currentOfCodeLetter, currentOfDesign, type LockedRotorCurrent } from '@/lib/standards/locked-rotor-current';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { failedRowOf } from '../context/driven-load';
import type { RatingRow } from '../context/rating-row';
import { type Compared, type Finding, toJudge, toRead } from '../finding';
import { startOf } from './start-of';

/** Does the inrush stay under the instantaneous trip? Null: it does, or a soft starter or drive holds it down. */
export function inrush(
  set: PumpSet,
  candidate: Motor,
  context: Context,
  tripA: number,
  compared: Compared,
): Finding | null {
  const { row } = context;
  const start = startOf(set, candidate, context);
  if (start === 'drive' || start === 'soft') return null;
  const about: Compared = { ...compared, need: tripA, have: null, unit: 'A' };
  const current = lockedRotorCurrent(candidate, row);
  if (current === null)
    return toRead(
      about,
      `Inrush unknown; the trip acts at ${figure(tripA)} A.`,
      row.volts === null
        ? 'Measure the voltage between the lines at the starter, and read code letter and amps on the plate'
        : 'Read code letter, design letter and amps on the plate',
      row.volts === null ? 10 : 2,
    );
  const amps = current.amps * SHARE_OF_DIRECT[start ?? 'direct'];
  if (amps <= tripA) return null;
  const failedRow = failedRowOf(set);
  const was = set.failed === null || failedRow === null ? null : lockedRotorCurrent(set.failed, failedRow);
  // The trip may have carried less than the letter allows: that is for whoever sets it to say.
  const before =
    was !== null && was.cite === current.cite && current.amps <= was.amps
      ? ' The failed motor’s could reach as much: had the trip ever acted on a start?'
      : '';
  return toJudge(
    { ...about, have: amps, cite: current.cite },
    `Inrush can reach ${figure(amps)} A; the trip acts at ${figure(tripA)} A.${before}`,
  );
}

/** Line current at standstill over that of a direct start: from memory. */
const SHARE_OF_DIRECT = { direct: 1, 'star-delta': 1 / 3, 'part-winding': 0.65 } as const;

/** The high end of locked-rotor amps over plate amps of IEC motors: common practice, no source. */
const IEC_UP_TO = 9;
const IEC_CITE = 'locked-rotor up to 9 × plate amps: common practice, no source';

/**
 * The most this motor may take at the volts here: by its code letter, its design, or what is usual for IEC motors; null
 * unknown. A rotor at rest is a coil: its current follows volts over hertz, from what the plate promises at its own.
 */
export function lockedRotorCurrent(motor: Motor, row: RatingRow): LockedRotorCurrent | null {
  const { plate, volts, hertz, fluxRatio } = row;
  if (plate === null || plate.hertz === null || volts === null || hertz === null || fluxRatio === null) return null;
  const ratedVolts = (volts * plate.hertz) / (hertz * fluxRatio); // of a printed range, the volts φ is reckoned from
  const rated = atPlateVolts(motor, row, plate, ratedVolts);
  return rated === null ? null : { ...rated, amps: rated.amps * fluxRatio };
}

function atPlateVolts(
  { codeLetter, design, phases, kind: build }: Motor,
  { kind, amps }: RatingRow,
  { kw, hertz }: Rating,
  ratedVolts: number,
): LockedRotorCurrent | null {
  const isSinglePhase = phases === 1 || (phases === null && build === 'single-phase');
  // A code letter holds only at the plate's own frequency.
  if (codeLetter !== null && kind === 'plated' && kw !== null)
    return currentOfCodeLetter(codeLetter, kw, ratedVolts, isSinglePhase ? 1 : 3);
  // Design letters with a current ceiling are those of three-phase motors.
  if (design === null || isSinglePhase) return null;
  if (
    design === 'N' ||
    design === 'NE' ||
    design === 'NY' ||
    design === 'NEY' ||
    design === 'H' ||
    design === 'HE' ||
    design === 'HY' ||
    design === 'HEY'
  )
    return amps === null ? null : { amps: amps * IEC_UP_TO, cite: IEC_CITE };
  if (kind !== 'plated' || kw === null || hertz === null || hertz < 59) return null;
  return currentOfDesign(design, kw, ratedVolts);
}
