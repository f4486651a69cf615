import { contextOf } from '@/lib/matching/context';
import { fedBy } from '@/lib/matching/context/fed-by';
import type { RatingRow } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { partLoad } from '@/lib/standards/part-load';
import { PART_LOAD_PF_CITE, partLoadPowerFactor } from '@/lib/standards/part-load-power-factor';
import { hoursRun } from './hours-run';
import { ratedEfficiency } from './rated-efficiency';
import { phaseFactor, ratedPowerFactor } from './rated-power-factor';
import type { RunningAtDuty } from './running-at-duty';
import { known, toldOr, unknown, type WorkedOut, workedOut } from './worked-out';
import { yearlyCost } from './yearly-cost';

/**
 * How `motor` runs in the set at its duty: where matching solves the operating point, with the speed put right where a
 * sheave or a drive does that. Powers in kW, reactive in kvar. Part-load efficiency: DOE fact sheet, Figure 1 (read in
 * one text); part-load power factor: lib/standards/part-load-power-factor. What is not known says why.
 */
export function runningOf(set: PumpSet, motor: Motor, settings: SiteSettings): RunningAtDuty {
  const { row, point } = contextOf(set, motor, { settings, asOf: null });
  const at = point.restored ?? point;
  const { isDriveFed } = fedBy(set);
  const loadKw = toldOr(at.motorKw, AT_DUTY, point.why ?? NO_TRANSMISSION);
  const loadPct = workedOut(
    { loadKw, ratedKw: ratedKwOf(row) },
    (of) => (100 * of.loadKw) / of.ratedKw,
    'of rated power',
  );
  const ratedEfficiencyPct = ratedEfficiency(motor, row, settings);
  const efficiencyPct = atLoad(row, ratedEfficiencyPct, loadPct);
  const inputKw = workedOut(
    { loadKw, efficiencyPct },
    (of) => (100 * of.loadKw) / of.efficiencyPct,
    INPUT[isDriveFed ? 'drive' : 'mains'],
  );
  const lossesKw = workedOut({ inputKw, loadKw }, (of) => of.inputKw - of.loadKw, 'input less load');
  const powerFactor = isDriveFed
    ? unknown(ON_DRIVE)
    : pfAtLoad(ratedPowerFactor(motor, row, ratedEfficiencyPct), loadPct);
  const amps = isDriveFed
    ? toldOr(at.amps, 'in the motor’s leads, worked out from its plate', NO_AMPS)
    : lineAmps(motor, row, inputKw, powerFactor);
  const reactiveKvar = workedOut(
    { inputKw, powerFactor },
    (of) => of.inputKw * Math.tan(Math.acos(of.powerFactor)),
    'input × tan φ',
  );
  const hoursPerYear = hoursRun(settings);
  return {
    ...{ loadKw, loadPct, ratedEfficiencyPct, efficiencyPct, powerFactor, inputKw, lossesKw, amps, reactiveKvar },
    motorRpm: toldOr(at.motorRpm, AT_DUTY, point.why ?? 'The speed is not known.'),
    hoursPerYear,
    ...yearlyCost({ inputKw, reactiveKvar, hoursPerYear }, settings),
    assumes: point.assumes,
  };
}

const AT_DUTY = 'where motor and load meet at the greatest continuous duty';
const NO_TRANSMISSION = 'What gear or belt loses is not known, so neither is the load at the motor.';
const NO_AMPS = 'The plate does not tell enough to work out a current at this load.';
const ON_DRIVE = 'On a drive the supply sees the drive’s own power factor, not the motor’s.';
const INPUT = {
  mains: 'load over efficiency',
  drive: 'load over the motor’s efficiency, without what the drive loses',
} as const;
const PART_LOAD_CITE = 'US DOE fact sheet, Determining Electric Motor Load and Efficiency, Figure 1 (read in one text)';

const ratedKwOf = ({ kw }: RatingRow): WorkedOut =>
  toldOr(kw, 'rated power at this supply', 'The rated power at this supply is not known.');

function atLoad({ kw }: RatingRow, rated: WorkedOut, loadPct: WorkedOut): WorkedOut {
  if (rated.value === null) return rated;
  if (loadPct.value === null) return loadPct;
  // The sizes of the part-load curves are printed by rated input.
  const ratio = kw === null ? null : partLoad((100 * kw) / rated.value, loadPct.value / 100);
  if (ratio === null) return unknown('Below a tenth of rated load no efficiency is printed anywhere.');
  return known(rated.value * ratio, `${rated.from}, carried to this load by the ${PART_LOAD_CITE}`);
}

function pfAtLoad(rated: WorkedOut, loadPct: WorkedOut): WorkedOut {
  if (rated.value === null) return rated;
  if (loadPct.value === null) return loadPct;
  const pf = partLoadPowerFactor(rated.value, loadPct.value / 100);
  return pf === null
    ? unknown('No power factor is printed for this load.')
    : known(pf, `${rated.from}, carried to this load by ${PART_LOAD_PF_CITE}`);
}

function lineAmps({ phases }: Motor, { volts }: RatingRow, inputKw: WorkedOut, powerFactor: WorkedOut): WorkedOut {
  const factor = phaseFactor(phases);
  if (factor === null) return unknown('The phases are not known.');
  const atVolts = toldOr(volts, 'volts at the motor', 'The volts at the motor are not known.');
  return workedOut(
    { inputKw, powerFactor, atVolts },
    (of) => (1_000 * of.inputKw) / (factor * of.atVolts * of.powerFactor),
    'from input power, volts and power factor',
  );
}
