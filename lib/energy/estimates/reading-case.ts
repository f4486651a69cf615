import { fedBy } from '@/lib/matching/context/fed-by';
import { type RatingRow, ratingRowOf } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import { type Measured, meanRead } from '../measured';
import { ratedEfficiency } from '../rated-efficiency';
import { phaseFactor, ratedPowerFactor } from '../rated-power-factor';
import { known, unknown, type WorkedOut } from '../worked-out';

/** What the ways to estimate a load share: the plate's row at the volts that were read, and means of the readings. */
export interface ReadingCase {
  motor: Motor;
  measured: Measured;
  row: RatingRow;
  isDriveFed: boolean;
  meanVolts: number | null;
  meanAmps: number | null;
  /** Volts at the motor over the plate's; null: neither read nor told. */
  voltsRatio: number | null;
  /** Read, or from volts, amps and power factor. */
  inputKw: WorkedOut;
  /** From volts, amps and power factor alone. */
  productKw: WorkedOut;
  ratedEfficiencyPct: WorkedOut;
  ratedPowerFactor: WorkedOut;
}

export function readingCase(set: PumpSet, motor: Motor, measured: Measured, settings: SiteSettings): ReadingCase {
  const { isDriveFed } = fedBy(set);
  const meanVolts = meanRead(measured.volts);
  const meanAmps = meanRead(measured.amps);
  // The row that serves the volts that were read; a drive's output volts are no supply.
  const asRead =
    isDriveFed || meanVolts === null ? set : { ...set, supply: { ...set.supply, measuredVolts: meanVolts } };
  const row = ratingRowOf(asRead, motor);
  const efficiency = ratedEfficiency(motor, row, settings);
  const productKw = productOf(motor, measured, meanVolts, meanAmps);
  return {
    ...{ motor, measured, row, isDriveFed, meanVolts, meanAmps, productKw },
    voltsRatio: voltsRatioOf(row),
    inputKw: measured.inputKw === null ? productKw : known(measured.inputKw, 'input power as read'),
    ratedEfficiencyPct: efficiency,
    ratedPowerFactor: ratedPowerFactor(motor, row, efficiency),
  };
}

/** P = √3 V I pf: DOE load fact sheet (read in two texts). The means over the lines stand for all three. */
function productOf({ phases }: Motor, { powerFactor }: Measured, volts: number | null, amps: number | null): WorkedOut {
  const factor = phaseFactor(phases);
  if (factor === null) return unknown('The plate does not tell the phases.');
  const missing = [
    volts === null ? 'volts' : null,
    amps === null ? 'amps' : null,
    powerFactor === null ? 'power factor' : null,
  ].filter((one) => one !== null);
  if (volts === null || amps === null || powerFactor === null)
    return unknown(`Read the input power in kW, or else besides: ${missing.join(', ')}.`);
  const kw = (factor * volts * amps * powerFactor) / 1_000;
  const root = phases === 1 ? '' : '√3 × ';
  return known(
    kw,
    `${root}${figure(volts, 1)} V × ${figure(amps, 2)} A × ${figure(powerFactor, 3)} = ${figure(kw, 2)} kW`,
  );
}

/** φ = (V/f)/(Vn/fn), so V/Vn is φ·f/fn. */
function voltsRatioOf({ plate, fluxRatio, hertz }: RatingRow): number | null {
  if (plate === null || plate.hertz === null || fluxRatio === null || hertz === null) return null;
  return (fluxRatio * hertz) / plate.hertz;
}
