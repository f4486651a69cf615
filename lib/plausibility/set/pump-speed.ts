import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { ratioOf } from '../driven';
import { fedOf, servingRow } from '../fed';

/**
 * Does the pump turn slower than the most it may? In rpm, by the plate's speed and the ratio; on a drive at its highest
 * frequency. Not asked without a greatest pump speed.
 */
export function pumpSpeed(set: PumpSet, motor: Motor | null): Doubt | null {
  const { maxPumpRpm: most, atPumpRpm } = set.load;
  if (most === null) return null;
  const about = { rule: 'pump-speed', thing: 'set', cite: CITE } as const;
  if (atPumpRpm !== null && atPumpRpm > most)
    return {
      ...about,
      grade: 'wrong',
      field: 'load.atPumpRpm',
      have: atPumpRpm,
      expected: most,
      unit: 'rpm',
      says: `The load is told at ${figure(atPumpRpm)} rpm, ${figure(atPumpRpm - most)} rpm above the ${figure(most)} rpm the pump may turn.`,
      figures: figuresOf({ atPumpRpm, most }),
    };
  const ratio = ratioOf(set);
  const rpm = motor === null ? null : (servingRow(set, motor)?.rpm ?? null);
  if (ratio === null || rpm === null) return null;
  const { isOnDrive, hertz } = fedOf(set);
  const highest = set.supply.drive?.maxHertz ?? null;
  const share = isOnDrive && highest !== null && hertz !== null ? highest / hertz : 1;
  const pumpRpm = (rpm * share) / ratio;
  if (pumpRpm <= most * ROUNDED) return null;
  const asked = { rpm, ratio, most, highest: isOnDrive ? highest : null, hertz: isOnDrive ? hertz : null };
  const sum = (drive: string) =>
    `${figure(rpm)} rpm${drive} / ${figure(ratio, 3)} = ${figure(pumpRpm, 0)} rpm at the pump, which may turn at ${figure(most)} rpm at most.`;
  // Above its base frequency the drive's limit is what can be put right first.
  if (share > 1 && highest !== null && hertz !== null)
    return {
      ...about,
      grade: 'doubtful',
      field: 'supply.drive.maxHertz',
      have: highest,
      expected: short((most * ratio * hertz) / rpm),
      unit: 'Hz',
      says: sum(` × ${figure(highest)} Hz / ${figure(hertz)} Hz`),
      figures: figuresOf(asked),
    };
  return {
    ...about,
    grade: isOnDrive ? 'doubtful' : 'wrong',
    field: 'coupling.ratio',
    have: ratio,
    expected: short((rpm * share) / most),
    unit: null,
    says: sum(share === 1 ? '' : ` × ${figure(highest as number)} Hz / ${figure(hertz as number)} Hz`),
    figures: figuresOf(asked),
  };
}

const short = (value: number) => Number(value.toPrecision(3));
/** Slip falls with the load: a plate's speed is good to a fiftieth. */
const ROUNDED = 1.02;
const CITE = 'the pump’s own limit, as told; n / ratio';
