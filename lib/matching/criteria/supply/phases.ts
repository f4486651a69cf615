import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { fedBy } from '../../context/fed-by';
import type { RatingRow } from '../../context/rating-row';
import { block, type Finding, ok, toJudge, toRead } from '../../finding';

/** As many phases as the supply, or as the drive gives? Always asked. */
export function phases(set: PumpSet, candidate: Motor, { row, settings }: Context): Finding {
  const fed = fedBy(set);
  const need = fed.phases;
  // The kind tells it where the plate's own figure was not entered.
  const have = candidate.phases ?? (candidate.kind === 'single-phase' ? 1 : null);
  const compared = { criterion: 'phases', have, need, unit: 'phases', cite: CITE } as const;
  if (have === null)
    return toRead(
      compared,
      'Number of phases of the motor unknown.',
      'Read the plate: 1 or 3 phases (PH, or 1~ or 3~)',
      2,
    );
  if (need === null)
    return toRead(compared, 'Number of phases of the supply unknown.', 'Count the live conductors at the isolator', 5);
  if (have === need)
    return ok(
      compared,
      fed.isDriveFed
        ? 'Three-phase, as is the drive’s output.'
        : `${need === 1 ? 'Single' : 'Three'}-phase, as is the supply.`,
    );
  if (have === 3) return block(compared, 'A three-phase motor does not run on a single-phase supply.');
  if (fed.isDriveFed) return block(compared, 'A single-phase motor cannot run on a three-phase drive.');
  const suits = isOfTheseVolts(row);
  if (suits === false)
    return block(
      compared,
      `A single-phase motor for another voltage than the ${row.volts === null ? 'one' : `${figure(row.volts, 1)} V`} between two of the lines.`,
    );
  return toJudge(
    compared,
    suits === null
      ? 'A single-phase motor runs across two lines only if they are at its own voltage, which is not known here.'
      : 'A single-phase motor at the voltage of two lines: it can run across them, with the overload’s third pole looped in.',
    {
      id: 'rewire-starter',
      what: 'Feed from two lines and loop the third overload pole',
      hours: settings.hours['rewire-starter'],
    },
  );
}

const CITE = 'common practice, no source';
const WITHIN = 0.1; // MG 1-12.44.1: the voltage a motor must run at

/** Null where either voltage is unknown. */
function isOfTheseVolts({ plate, volts }: RatingRow): boolean | null {
  if (plate === null || volts === null) return null;
  const low = plate.voltsMin ?? plate.volts ?? plate.voltsMax;
  const high = plate.voltsMax ?? plate.volts ?? plate.voltsMin;
  if (low === null || high === null) return null;
  return volts >= low * (1 - WITHIN) && volts <= high * (1 + WITHIN);
}
