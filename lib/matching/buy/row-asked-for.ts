import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { UNTOLD_RATING } from '@/lib/plant/untold';
import { fullLoadCurrent } from '@/lib/standards/full-load-current';
import { nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { nominalVoltage } from '@/lib/standards/nominal-voltage';
import type { StandardRating } from '@/lib/standards/standard-ratings';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { kwOfHp } from '@/lib/units/power';
import { drivenLoadOf, failedRowOf } from '../context/driven-load';
import { fedBy } from '../context/fed-by';
import { isSameSize } from './is-same-size';
import { mostAmps } from './most-amps';

/** A standard rating as the row that the plate of a motor for this set would show. */
export function rowAskedFor(set: PumpSet, rating: StandardRating, system: 'NEMA' | 'IEC'): Rating {
  const { hertz } = fedBy(set);
  const volts = plateVoltsOf(set);
  const level = hertz === 50 ? 'IE3' : 'premium';
  return {
    ...UNTOLD_RATING,
    volts,
    hertz,
    hp: rating.hp,
    kw: rating.hp === null ? rating.kw : kwOfHp(rating.hp),
    rpm: rpmOf(set, rating.poles, hertz),
    amps: ampsOf(set, rating, system, volts),
    connection: set.supply.start === 'star-delta' ? 'delta' : null,
    efficiencyPct: nominalEfficiency(level, rating.kw, rating.poles, 'enclosed')?.pct ?? null,
  };
}

/** The plate built for the nominal system; what was measured there names no plate unless the system is not told. */
function plateVoltsOf(set: PumpSet): number | null {
  const fed = fedBy(set);
  const volts = fed.isMeasured ? (set.supply.volts ?? fed.volts) : fed.volts;
  return volts === null ? null : (nominalVoltage(volts)?.plateVolts ?? volts);
}

/** The greatest full-load slip of an ordinary cage motor: NEMA MG 10 Table 2-1, designs B and C (read in two texts). */
const SLIP_UP_TO = 0.05;
const DUST = 1e-9;

/**
 * Full-load speed as the failed motor of these poles had it, else the speed that the pump asks, where that can be a
 * full-load speed of these poles; null: nothing tells it. A drive sets its own speed.
 */
function rpmOf(set: PumpSet, poles: number, hertz: number | null): number | null {
  const failedRow = failedRowOf(set);
  if (failedRow?.kind === 'plated' && set.failed?.poles === poles) {
    const rpm = failedRow.plate?.rpm ?? null;
    if (rpm !== null) return rpm;
  }
  const asked = set.supply.start === 'drive' ? null : drivenLoadOf(set).motorRpm;
  if (asked === null || hertz === null) return null;
  const ns = synchronousSpeed(poles, hertz);
  return asked < ns * (1 - DUST) && asked >= ns * (1 - SLIP_UP_TO) ? asked : null;
}

/** The most that full-load efficiency times power factor comes to: common practice, no source. */
const GREATEST_YIELD = 0.9;

/**
 * As the failed motor had them where it was of the same power, else as a table for sizing circuits prints, and never more
 * than contactor, cable and drive carry, so far as a motor of this power can take so little.
 */
function ampsOf(set: PumpSet, rating: StandardRating, system: 'NEMA' | 'IEC', volts: number | null): number | null {
  const failedRow = failedRowOf(set);
  const isOfItsSize = failedRow !== null && failedRow.kw !== null && isSameSize(failedRow.kw, rating.kw);
  const table = volts === null || system === 'IEC' ? null : fullLoadCurrent(3, rating.kw, volts);
  const had = isOfItsSize && failedRow.plate?.volts === volts ? failedRow.amps : null;
  const usual = had ?? table?.amps ?? null;
  const most = mostAmps(set);
  if (most === null || volts === null) return usual;
  const least = (1000 * rating.kw) / (Math.sqrt(3) * volts * GREATEST_YIELD);
  return most.amps >= least && (usual === null || usual > most.amps) ? most.amps : usual;
}
