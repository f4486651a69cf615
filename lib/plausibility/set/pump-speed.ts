import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { type Doubt, figuresOf } from '../doubt';
import { ratioOf } from '../driven';
import { fedOf, servingRow } from '../fed';

/**
 * Does the pump turn slower than the most it may? In rpm, by the plate's speed and the ratio; on a drive at its highest
 * frequency. Not asked without a greatest pump speed.
 */
export function pumpSpeed(set: PumpSet, motor: Motor | null): Doubt | null {
  const { maxPumpRpm: most, atPumpRpm } = set.load;
  if (most === null) return null;
  const about = { rule: 'pump-speed', thing: 'set', unit: 'rpm', cite: CITE } as const;
  if (atPumpRpm !== null && atPumpRpm > most)
    return {
      ...about,
      grade: 'wrong',
      field: 'load.atPumpRpm',
      have: atPumpRpm,
      expected: most,
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
  const drive = share === 1 ? '' : ` × ${figure(highest as number)} Hz / ${figure(hertz as number)} Hz`;
  return {
    ...about,
    grade: isOnDrive ? 'doubtful' : 'wrong',
    field: isOnDrive && share > 1 ? 'supply.drive.maxHertz' : 'coupling.ratio',
    have: isOnDrive && share > 1 ? highest : ratio,
    unit: isOnDrive && share > 1 ? 'Hz' : null,
    expected: Number(((rpm * (isOnDrive && share > 1 ? 1 : share)) / most).toPrecision(3)),
    says: `${figure(rpm)} rpm${drive} / ${figure(ratio, 3)} = ${figure(pumpRpm, 0)} rpm at the pump, which may turn at ${figure(most)} rpm at most.`,
    figures: figuresOf({ rpm, ratio, most, highest: isOnDrive ? highest : null, hertz: isOnDrive ? hertz : null }),
  };
}

/** Slip falls with the load: a plate's speed is good to a fiftieth. */
const ROUNDED = 1.02;
const CITE = 'the pump’s own limit, as told; n / ratio';
