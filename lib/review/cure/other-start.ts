import type { ReviewCase } from '../review-case';
import type { Change } from './cure';

/** A capacitor taken off where none may be; a soft starter let go further; a direct start where the supply stands it. */
export function otherStart({ set, by }: ReviewCase): Change[] {
  const { supply } = set;
  const { hours } = by.settings;
  const changes: Change[] = [];
  if (supply.capacitorKvar !== null && supply.capacitorKvar > 0)
    changes.push({
      what: `Remove the ${supply.capacitorKvar} kvar capacitor at the motor`,
      hours: hours['power-factor-capacitor'],
      set: { ...set, supply: { ...supply, capacitorKvar: null } },
    });
  if (supply.start === 'soft' && supply.softStartLimitPct !== null)
    for (let limit = supply.softStartLimitPct + STEP_PCT; limit <= SOFT_UP_TO_PCT; limit += STEP_PCT)
      changes.push({
        what: `Raise the soft starter’s current limit from ${supply.softStartLimitPct} % to ${limit} %, if it and the supply stand that`,
        hours: hours['drive-settings'],
        set: { ...set, supply: { ...supply, softStartLimitPct: limit } },
      });
  const isReduced = supply.start === 'star-delta' || supply.start === 'part-winding' || supply.start === 'soft';
  if (isReduced && supply.directAllowed !== false)
    changes.push({
      what:
        supply.directAllowed === true
          ? 'Start it direct, which this supply allows: rewire the starter'
          : 'Start it direct, if whoever runs the supply allows it: rewire the starter',
      hours: hours['rewire-starter'],
      set: { ...set, supply: { ...supply, start: 'direct' } },
    });
  return changes;
}

const STEP_PCT = 25;
/** Soft starters are seldom let go further: common practice, no source. */
const SOFT_UP_TO_PCT = 500;
