import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { nominalVoltage } from '@/lib/standards/nominal-voltage';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { fedBy } from '../../context/fed-by';
import { block, type Compared, type Finding, note, ok, toJudge, toRead } from '../../finding';
import { joined } from '../../joined';

/**
 * Do the plate's volts fit those of the supply, or of the drive's output? `have` and `need` in V between lines.
 * Not asked where the plate has no row at the supply's frequency: then the frequency judges. An unbalance no motor
 * stands is told in either case.
 */
export function voltage(set: PumpSet, _candidate: Motor, { row }: Context): Finding | null {
  const { isDriveFed, isMeasured } = fedBy(set);
  const unbalancePct = isDriveFed ? null : set.supply.unbalancePct;
  const isUnrunnable = unbalancePct !== null && unbalancePct > GREATEST_UNBALANCE_PCT;
  if (row.kind !== 'plated' && !isUnrunnable) return null;
  const { plate, volts } = row;
  const have = plate === null ? null : printed(plate);
  const compared: Compared = { criterion: 'voltage', have, need: volts, unit: 'V', cite: LIMITS };
  const unbalance = unbalanced(unbalancePct, compared);
  if (row.kind !== 'plated' || plate === null) return unbalance;
  return joined(fitOf(plate, volts, isMeasured, isDriveFed, compared), unbalance);
}

const LIMITS = 'NEMA MG 1-12.44.1 (read in two texts); IEC 60034-1 zone A, ±5 % (read in two texts)';
const UNBALANCE = 'NEMA MG 1 14.36 (read in two texts)';
const USUAL = 0.05; // IEC 60034-1 zone A
const GREATEST = 0.1; // NEMA MG 1-12.44.1
const DUST = 1e-9; // 437 V is 460 V less 5 % exactly
const BALANCED_UP_TO_PCT = 1;
const GREATEST_UNBALANCE_PCT = 5;

const MEASURE = 'Measure the voltage between all three lines at the starter with the plant running';
const SOURCE = { true: 'the drive’s output', false: 'the supply' } as const;

function fitOf(
  plate: Rating,
  volts: number | null,
  isMeasured: boolean,
  isDriveFed: boolean,
  compared: Compared,
): Finding {
  const low = plate.voltsMin ?? plate.volts ?? plate.voltsMax;
  const high = plate.voltsMax ?? plate.volts ?? plate.voltsMin;
  if (low === null || high === null) return toRead(compared, 'Plate volts unknown.', 'Read the volts on the plate', 2);
  if (volts === null)
    return isDriveFed
      ? toRead(compared, 'Output volts of the drive unknown.', 'Read the motor voltage set in the drive', 5)
      : toRead(compared, 'Supply volts unknown.', MEASURE, 10);
  const from = SOURCE[isDriveFed ? 'true' : 'false'];
  if (isLowEndOf230(low, high, volts)) {
    const says = `A 208–230 V plate is a 230 V design: at ${figure(volts, 1)} V it gives ${torquePct(volts, 230)} % of its torque and has no room for a drop.`;
    return isMeasured ? toJudge(compared, says) : toRead(compared, says, MEASURE, 10);
  }
  if (volts >= low && volts <= high && low < high)
    return ok(compared, `${figure(volts, 1)} V lies in the printed range ${figure(low, 1)} to ${figure(high, 1)} V.`);

  const near = volts < low ? low : volts > high ? high : volts;
  const off = (volts - near) / near;
  // Of a range alone the end that is nearest was compared.
  const about = plate.volts === null ? { ...compared, have: near } : compared;
  if (Math.abs(off) <= USUAL + DUST) return ok(about, inside(near, volts, off, isMeasured, from));
  const apart = `${from} is ${figure(Math.abs(off) * 100, 1)} % ${off < 0 ? 'below' : 'above'} the plate’s ${figure(near, 1)} V`;
  if (Math.abs(off) > GREATEST + DUST) return block(about, capital(`${apart}: more than 10 %.`));
  const says = `${apart}: torque ${off < 0 ? 'falls' : 'rises'} with the square to ${torquePct(volts, near)} %${off < 0 ? '' : ', and the iron runs hotter'}.`;
  return isMeasured || isDriveFed ? toJudge(about, capital(says)) : toRead(about, capital(says), MEASURE, 10);
}

function inside(plateVolts: number, volts: number, off: number, isMeasured: boolean, from: string): string {
  if (off === 0) return `The plate’s ${figure(plateVolts, 1)} V is what ${from} gives.`;
  const isByDesign = !isMeasured && nominalVoltage(volts)?.plateVolts === plateVolts;
  return isByDesign
    ? `${figure(plateVolts, 1)} V is the plate for a ${figure(volts, 1)} V system, by design.`
    : `${capital(from)} is ${figure(Math.abs(off) * 100, 1)} % ${off < 0 ? 'below' : 'above'} the plate’s ${figure(plateVolts, 1)} V: within 5 %.`;
}

/** A "208-230" plate fed near its low end: trade caution, from memory; V² arithmetic. */
const isLowEndOf230 = (low: number, high: number, volts: number) =>
  low === 208 && (high === 230 || high === 240) && volts < 230 * (1 - USUAL) - DUST && volts >= low * (1 - USUAL);

function unbalanced(pct: number | null, compared: Compared): Finding | null {
  if (pct === null || pct <= BALANCED_UP_TO_PCT) return null;
  const about = { ...compared, cite: UNBALANCE };
  const says = `Voltage unbalance is ${figure(pct, 1)} %`;
  return pct > GREATEST_UNBALANCE_PCT
    ? block(about, `${says}: above 5 % no motor should run.`)
    : note(about, `${says}: the motor is derated for it.`);
}

const torquePct = (volts: number, plateVolts: number) => figure((volts / plateVolts) ** 2 * 100, 0);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function printed({ volts, voltsMin, voltsMax }: Rating): number | string | null {
  if (volts !== null) return volts;
  if (voltsMin !== null && voltsMax !== null && voltsMin !== voltsMax) return `${voltsMin}–${voltsMax}`;
  return voltsMin ?? voltsMax;
}
