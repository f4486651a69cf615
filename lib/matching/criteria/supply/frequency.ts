import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { fedBy } from '../../context/fed-by';
import type { RatingRow } from '../../context/rating-row';
import { block, type Compared, type Finding, ok, toJudge, toRead } from '../../finding';

/**
 * Has the plate a row at the supply's frequency, or the drive's base frequency? `have` and `need` in Hz. Without one
 * the best answer is a check, on the flux ratio φ = (V/f)/(Vn/fn). Always asked.
 */
export function frequency(set: PumpSet, candidate: Motor, { row }: Context): Finding {
  const have = row.plate?.hertz ?? null;
  const compared: Compared = { criterion: 'frequency', have, need: row.hertz, unit: 'Hz', cite: CITE };
  if (row.hertz === null) return supplyUnknown(set, compared);
  if (row.kind === 'none') return toRead(compared, 'Plate frequency unknown.', 'Read volts and hertz on the plate', 2);
  if (row.kind === 'plated') return ok(compared, `The plate has a row at ${figure(row.hertz, 1)} Hz.`);
  return rerated(candidate, row, fedBy(set).isDriveFed, compared);
}

const CITE = 'NEMA MG 1-12.44 (read in two texts); V/f held, application notes on 50 and 60 Hz (read in two texts)';
const GREATEST_FLUX = 1.1; // saturation: from memory, beside the 10 % of MG 1-12.44.1
const LEAST_FLUX = 0.8;
const USUAL_FLUX = 0.95;
const DUST = 1e-9;

function supplyUnknown(set: PumpSet, compared: Compared): Finding {
  const { isDriveFed, volts } = fedBy(set);
  if (isDriveFed)
    return volts === null
      ? toRead(
          compared,
          'Base frequency and output volts of the drive unknown.',
          'Read the base frequency and the motor voltage set in the drive',
          5,
        )
      : toRead(compared, 'Base frequency of the drive unknown.', 'Read the base frequency set in the drive', 5);
  return volts === null
    ? toRead(
        compared,
        'Supply frequency and volts unknown.',
        'Measure frequency and voltage between all three lines at the starter',
        10,
      )
    : toRead(compared, 'Supply frequency unknown.', 'Measure the frequency at the starter, or ask what the grid is', 5);
}

function rerated(candidate: Motor, row: RatingRow, isDriveFed: boolean, compared: Compared): Finding {
  const { fluxRatio, synchronousRpm, volts } = row;
  const { maxRpm } = candidate;
  if (maxRpm !== null && synchronousRpm !== null && synchronousRpm > maxRpm)
    return block(
      compared,
      `At ${compared.need} Hz it would turn at ${figure(synchronousRpm, 0)} rpm, above the ${figure(maxRpm, 0)} rpm it may turn at.`,
    );
  const plate = `Plated for ${compared.have} Hz only`;
  if (fluxRatio === null) {
    if (volts !== null) return toRead(compared, `${plate}; its volts are unknown.`, 'Read the volts on the plate', 2);
    const says = `${plate}; the voltage here is unknown.`;
    return isDriveFed
      ? toRead(compared, says, 'Read the motor voltage set in the drive', 5)
      : toRead(compared, says, 'Measure the voltage between the lines at the starter', 10);
  }
  const flux = `${plate}: V/f is ${figure(fluxRatio * 100, 0)} % of the plate’s`;
  if (fluxRatio > GREATEST_FLUX + DUST)
    return block(compared, `${flux}, above ${figure(GREATEST_FLUX * 100, 0)} %: the iron saturates.`);
  if (fluxRatio < LEAST_FLUX - DUST)
    return block(compared, `${flux}, below ${figure(LEAST_FLUX * 100, 0)} %: too little torque is left.`);
  const low = fluxRatio < USUAL_FLUX - DUST ? `, torque ${figure(fluxRatio ** 2 * 100, 0)} %` : '';
  const base = isDriveFed ? ' The drive must be set to the plate’s V/f.' : '';
  return toJudge(compared, `${flux}${low}.${base} ${powerOf(row)}${VOID}`);
}

const powerOf = ({ kw }: RatingRow) =>
  kw === null ? 'Its power here is in no table. ' : `Take it as ${figure(kw)} kW, service factor 1.0. `;
const VOID = 'Code letter, efficiency class mark and area certificate do not hold here.';
