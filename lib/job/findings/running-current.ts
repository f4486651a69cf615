import { figure } from '@/lib/units/figure';
import type { Predicted } from '../predicted';
import { found, type ReadingFinding } from '../reading-finding';
import type { PhaseAmps } from '../readings';
import { BAND_CITE, runningBand } from '../running-band';

/**
 * Does it take what was predicted, and no more than the plate allows? In A in the line: the greatest of those read is
 * held against the plate, their mean against the prediction. Null: none was read.
 */
export function runningCurrentFinding(amps: PhaseAmps, predicted: Predicted): ReadingFinding | null {
  const read = amps.filter((one) => one !== null);
  if (read.length === 0) return null;
  const greatest = Math.max(...read);
  const mean = read.reduce((sum, one) => sum + one, 0) / read.length;
  return abovePlate(greatest, predicted) ?? againstPredicted(mean, predicted);
}

const PLATE_CITE =
  'the motor’s plate: amps, with the service factor where it may be leaned on (NEMA MG 1 12.51, read in two texts)';

function abovePlate(have: number, { plateA, serviceFactor }: Predicted): ReadingFinding | null {
  if (plateA === null || have <= plateA * serviceFactor) return null;
  const allowed = serviceFactor === 1 ? '' : ` × service factor ${figure(serviceFactor)}`;
  return found(
    'block',
    { about: 'running-current', have, need: plateA * serviceFactor, unit: 'A', cite: PLATE_CITE },
    `Above the plate’s ${figure(plateA)} A${allowed}: stop it and find why. It burns itself.`,
  );
}

function againstPredicted(have: number, predicted: Predicted): ReadingFinding {
  const { amps, whyNoAmps, plateA } = predicted;
  const compared = { about: 'running-current', have, need: amps, unit: 'A', cite: BAND_CITE } as const;
  if (amps === null) {
    const within =
      plateA === null ? '' : ` It is ${have > plateA ? 'above' : 'within'} the plate’s ${figure(plateA)} A.`;
    return found('check', compared, `No current is predicted, so it cannot be judged: ${whyNoAmps}${within}`);
  }
  const { fromA, toA } = runningBand(amps);
  const band = `expected ${figure(fromA, 1)} to ${figure(toA, 1)} A`;
  if (have > toA)
    return found(
      'check',
      compared,
      `More than ${band}: look for a thicker or colder product, a closed or throttled valve, a tight coupling, low volts.`,
    );
  if (have < fromA)
    return found(
      'check',
      compared,
      `Less than ${band}: look for a pump that does not pump, a sheared key, a relief valve that lifts, a winding linked for other volts.`,
    );
  return found('ok', compared, `As ${band}.`);
}
