import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { UNTOLD_MOTOR, UNTOLD_RATING } from '@/lib/plant/untold';
import { fullLoadCurrent } from '@/lib/standards/full-load-current';
import { nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { nominalVoltage } from '@/lib/standards/nominal-voltage';
import type { StandardRating } from '@/lib/standards/standard-ratings';
import { figure } from '@/lib/units/figure';
import { kwOfHp } from '@/lib/units/power';
import { failedRowOf } from '../context/driven-load';
import { fedBy } from '../context/fed-by';
import { frameAskedFor } from './frame-asked-for';
import { isSameSize } from './is-same-size';

const USUAL_AMBIENT_C = 40;

/**
 * A standard rating as the motor a purchase for this set would ask for. It is no offer of anybody's: every figure is a
 * demand, taken from the set's needs, from the failed motor where the set states none, or from the standard. What none
 * of them tells stays unknown, for the supplier to answer.
 */
export function motorAskedFor(set: PumpSet, system: 'NEMA' | 'IEC', rating: StandardRating): Motor {
  const { failed, surroundings, supply } = set;
  const { frame, mounting } = frameAskedFor(set, system, rating.frame);
  const isDriveFed = supply.start === 'drive';
  const power = rating.hp === null ? `${figure(rating.kw)} kW` : `${figure(rating.hp)} hp`;
  return {
    ...UNTOLD_MOTOR,
    id: `${frame} ${power} ${rating.poles}-pole`,
    kind: 'cage',
    frame,
    mounting,
    phases: 3,
    poles: rating.poles,
    winding: windingOf(set),
    ratings: [rowOf(set, rating, system)],
    design: system === 'NEMA' ? (failed?.design === 'C' ? 'C' : 'B') : failed?.design === 'H' ? 'H' : 'N',
    enclosure: 'TEFC',
    ip: surroundings.ip ?? failed?.ip ?? 'IP55',
    insulation: 'F',
    ambientC: Math.max(USUAL_AMBIENT_C, surroundings.ambientC ?? USUAL_AMBIENT_C),
    duty: 'S1',
    driveDuty: isDriveFed ? 'inverter' : (failed?.driveDuty ?? null),
    constantTorqueRange: isDriveFed ? rangeOf(set) : null,
    terminalBox: set.base.cableEntry ?? failed?.terminalBox ?? null,
    rotation: 'either',
    washdown: washdownOf(set),
    classification: surroundings.classification ?? failed?.classification ?? null,
    has: [...new Set([...set.needs, ...(failed?.has ?? [])])],
    brake: failed?.brake ?? UNTOLD_MOTOR.brake,
  };
}

function windingOf({ supply }: PumpSet): Motor['winding'] {
  if (supply.start === 'star-delta') return 'star-delta-6';
  return supply.start === 'part-winding' ? 'part-winding-6' : null;
}

function washdownOf({ surroundings, failed }: PumpSet): Motor['washdown'] {
  const had = failed?.washdown ?? null;
  if (had === 'stainless') return had;
  return surroundings.washdown === true ? 'painted' : had;
}

/** Whole multiples of speed from the drive's least frequency to its base. */
function rangeOf({ supply }: PumpSet): number | null {
  const base = supply.drive?.baseHertz ?? supply.hertz;
  const least = supply.drive?.minHertz ?? null;
  return base === null || least === null ? null : Math.max(1, Math.ceil(base / least));
}

/** Full-load speed and amps are asked as the failed motor had them, where it was of the same power and poles. */
function rowOf(set: PumpSet, rating: StandardRating, system: 'NEMA' | 'IEC'): Rating {
  const { volts, hertz } = fedBy(set);
  const plateVolts = volts === null ? null : (nominalVoltage(volts)?.plateVolts ?? volts);
  const failedRow = failedRowOf(set);
  const isOfItsSize = failedRow !== null && failedRow.kw !== null && isSameSize(failedRow.kw, rating.kw);
  const isSamePoles = failedRow?.kind === 'plated' && set.failed?.poles === rating.poles;
  const table = plateVolts === null || system === 'IEC' ? null : fullLoadCurrent(3, rating.kw, plateVolts);
  const level = hertz === 50 ? 'IE3' : 'premium';
  return {
    ...UNTOLD_RATING,
    volts: plateVolts,
    hertz,
    hp: rating.hp,
    kw: rating.hp === null ? rating.kw : kwOfHp(rating.hp),
    rpm: isSamePoles ? (failedRow.plate?.rpm ?? null) : null,
    amps: isOfItsSize && failedRow.plate?.volts === plateVolts ? failedRow.amps : (table?.amps ?? null),
    connection: set.supply.start === 'star-delta' ? 'delta' : null,
    efficiencyPct: nominalEfficiency(level, rating.kw, rating.poles, 'enclosed')?.pct ?? null,
  };
}
