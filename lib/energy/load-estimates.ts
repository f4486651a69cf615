import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { type Contradiction, contradictionsOf } from './contradictions';
import { byInputPower, byOutput } from './estimates/by-input-power';
import { byLineCurrent } from './estimates/by-line-current';
import { bySlip, bySlipAtVoltage } from './estimates/by-slip';
import type { LoadEstimate, NotMade } from './estimates/estimate';
import { readingCase } from './estimates/reading-case';
import type { Measured } from './measured';
import type { WorkedOut } from './worked-out';

export interface LoadEstimates {
  /** Every one the readings allow, best known first: the order says nothing of which is right. */
  estimates: LoadEstimate[];
  /** Those they do not allow, with the reading or figure that is missing. */
  notMade: NotMade[];
  /** Where the readings contradict each other. */
  contradictions: Contradiction[];
  /** Electrical power into the motor: read, or from volts, amps and power factor. */
  inputKw: WorkedOut;
}

/**
 * The load of the motor in the set by every way that the readings allow, in per cent of its rated power. None is chosen:
 * a person weighs them. Sources stand in each.
 */
export function loadEstimates(set: PumpSet, motor: Motor, measured: Measured, settings: SiteSettings): LoadEstimates {
  const read = readingCase(set, motor, measured, settings);
  const answers = [byInputPower, byOutput, byLineCurrent, bySlip, bySlipAtVoltage].map((by) => by(read));
  const estimates = answers.filter((one) => one.made);
  return {
    estimates,
    notMade: answers.filter((one) => !one.made),
    contradictions: contradictionsOf(estimates, read),
    inputKw: read.inputKw,
  };
}
