import { figure } from '@/lib/units/figure';
import { caseOf, type ReviewCase } from '../review-case';
import type { ReviewRule } from '../rule';
import type { Change } from './cure';
import { lowerFirst } from './lower-first';

/** Limits are set in half hertz. */
const STEP_HZ = 0.5;

/** The drive's lower limit raised, its upper one lowered, or both, each no further than the frequency the set runs at. */
export function driveLimits({ set, motor, context, by }: ReviewCase, rule: ReviewRule): Change[] {
  const { drive } = set.supply;
  const runsAt = (context.point.restored ?? context.point).hertz ?? context.row.hertz;
  if (set.supply.start !== 'drive' || drive === null || runsAt === null) return [];
  const with_ = (limits: { minHertz?: number; maxHertz?: number }) => ({
    ...set,
    supply: { ...set.supply, drive: { ...drive, ...limits } },
  });
  const isRight = (limits: { minHertz?: number; maxHertz?: number }) => rule(caseOf(with_(limits), motor, by)) === null;
  const hours = by.settings.hours['drive-settings'];
  const { minHertz, maxHertz } = drive;
  const lowered = maxHertz === null ? null : first(maxHertz, runsAt, -STEP_HZ, (hertz) => isRight({ maxHertz: hertz }));
  if (lowered !== null) return [{ what: lowerTo(maxHertz, lowered), hours, set: with_({ maxHertz: lowered }) }];
  if (minHertz === null) return [];
  const raised = first(minHertz, runsAt, STEP_HZ, (hertz) => isRight({ minHertz: hertz }));
  if (raised !== null) return [{ what: raiseTo(minHertz, raised), hours, set: with_({ minHertz: raised }) }];
  if (maxHertz === null) return [];
  // Both are too wide: the upper one as low as it goes, then the lower one raised as little as does.
  const lowest = Math.min(maxHertz, Math.ceil(runsAt / STEP_HZ) * STEP_HZ);
  const both = first(minHertz, runsAt, STEP_HZ, (hertz) => isRight({ minHertz: hertz, maxHertz: lowest }));
  return both === null
    ? []
    : [
        {
          what: `${lowerTo(maxHertz, lowest)}, and ${lowerFirst(raiseTo(minHertz, both))}`,
          hours,
          set: with_({ minHertz: both, maxHertz: lowest }),
        },
      ];
}

const lowerTo = (from: number | null, hertz: number) =>
  `Lower the drive’s upper limit${from === null ? '' : ` from ${figure(from, 1)} Hz`} to ${figure(hertz, 1)} Hz`;
const raiseTo = (from: number, hertz: number) =>
  `Raise the drive’s lower limit from ${figure(from, 1)} Hz to ${figure(hertz, 1)} Hz`;

/** The first whole step from one frequency towards another at which it is right; null: none is. */
function first(from: number, to: number, step: number, isRight: (hertz: number) => boolean): number | null {
  const start = step > 0 ? Math.floor(from / step) * step + step : Math.ceil(from / -step) * -step + step;
  for (let hertz = start; step > 0 ? hertz <= to : hertz >= to; hertz += step) if (isRight(hertz)) return hertz;
  return null;
}
