import { fedBy } from '@/lib/matching/context/fed-by';
import { plateRows } from '@/lib/matching/context/plate-rows';
import { type RatingRow, ratingRowOf } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { type Measured, meanRead, type PerPhase } from '../measured';
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
  meanAmps: WorkedOut;
  /** Volts at the motor over the plate's; null: neither read nor told. */
  voltsRatio: number | null;
  /** Read, or from volts, amps and power factor. */
  inputKw: WorkedOut;
  /** From volts, amps and power factor alone. */
  productKw: WorkedOut;
  ratedEfficiencyPct: WorkedOut;
  ratedPowerFactor: WorkedOut;
  /** What the reader is to know of the mean of the amps, and of the row that readings are held against. */
  caveats: { ofAmps: readonly string[]; ofRow: readonly string[] };
}

export function readingCase(set: PumpSet, motor: Motor, measured: Measured, settings: SiteSettings): ReadingCase {
  const { isDriveFed } = fedBy(set);
  const meanVolts = meanOf(motor, measured.volts);
  const meanAmps = meanAmpsOf(motor, measured.amps);
  // The row that serves the volts that were read; a drive's output volts are no supply.
  const asRead =
    isDriveFed || meanVolts === null ? set : { ...set, supply: { ...set.supply, measuredVolts: meanVolts } };
  const row = ratingRowOf(asRead, isDriveFed ? motor : atSpeedRead(set, motor, measured.rpm));
  const efficiency = ratedEfficiency(motor, row, settings);
  const productKw = productOf(motor, measured, meanVolts, meanAmps);
  return {
    ...{ motor, measured, row, isDriveFed, meanVolts, meanAmps, productKw },
    voltsRatio: voltsRatioOf(row),
    inputKw: measured.inputKw === null ? productKw : known(measured.inputKw, 'input power as read'),
    ratedEfficiencyPct: efficiency,
    ratedPowerFactor: ratedPowerFactor(motor, row, efficiency),
    caveats: caveatsOf(motor, measured),
  };
}

/** Of a single-phase motor the first reading alone: between its line and neutral there are half the volts. */
const meanOf = ({ phases }: Motor, read: PerPhase): number | null => (phases === 1 ? read[0] : meanRead(read));

function meanAmpsOf(motor: Motor, amps: PerPhase): WorkedOut {
  const mean = meanOf(motor, amps);
  if (mean === null) return unknown('No amps were read.');
  if (mean === 0) return unknown('No amps flow: it does not run.');
  const dead = motor.phases === 1 ? 0 : amps.indexOf(0) + 1;
  return dead > 0
    ? unknown(`L${dead} carries nothing: it runs on the other lines alone, and their amps tell no load.`)
    : known(mean, 'amps as read');
}

/** A two-speed motor by the rows of the speed it was read at: of those whose field is faster the slowest. */
function atSpeedRead(set: PumpSet, motor: Motor, rpm: number | null): Motor {
  const { hertz } = fedBy(set);
  if (motor.kind !== 'two-speed' || rpm === null || hertz === null) return motor;
  const fields = plateRows(motor).flatMap(({ plate, poles }) => {
    const field = poles === null ? 0 : synchronousSpeed(poles, hertz);
    return field > rpm ? [{ plate, field }] : [];
  });
  const slowest = Math.min(...fields.map(({ field }) => field));
  const ratings = fields.filter(({ field }) => field === slowest).map(({ plate }) => plate);
  return ratings.length === 0 ? motor : { ...motor, ratings };
}

function caveatsOf({ phases, kind }: Motor, { amps, rpm }: Measured): ReadingCase['caveats'] {
  const isGap = phases !== 1 && amps.some((one) => one !== null) && amps.some((one) => one === null);
  return {
    ofAmps: isGap ? ['Not every line was read: the mean is of those that were.'] : [],
    ofRow:
      kind === 'two-speed' && rpm === null
        ? ['Two-speed: its speed was not read, so it is held against the higher one.']
        : [],
  };
}

/** P = √3 V I pf: DOE load fact sheet (read in two texts). The means over the lines stand for all three. */
function productOf({ phases }: Motor, measured: Measured, volts: number | null, meanAmps: WorkedOut): WorkedOut {
  const { powerFactor } = measured;
  const factor = phaseFactor(phases);
  if (factor === null) return unknown('The plate does not tell the phases.');
  const isRead = measured.amps.some((one) => one !== null);
  const missing = [
    volts === null ? 'volts' : null,
    isRead ? null : 'amps',
    powerFactor === null ? 'power factor' : null,
  ].filter((one) => one !== null);
  if (volts === null || powerFactor === null || !isRead)
    return unknown(`Read the input power in kW, or else besides: ${missing.join(', ')}.`);
  if (meanAmps.value === null) return meanAmps;
  const amps = meanAmps.value;
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
