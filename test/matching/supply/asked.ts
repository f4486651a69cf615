import type { Context } from '@/lib/matching/context';
import { operatingPointOf } from '@/lib/matching/context/operating-point';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';

type Ask = (set: PumpSet, candidate: Motor, context: Context) => Finding | null;

/** The answer with as much of the context as the supply's questions read; `runningA` stands in for the solved amps. */
export function asked(ask: Ask, set: PumpSet, candidate: Motor, runningA?: number | null): Finding | null {
  const row = ratingRowOf(set, candidate);
  const solved = operatingPointOf(set, candidate, row);
  const point = runningA === undefined ? solved : { ...solved, amps: runningA };
  const read: Partial<Context> = { settings: defaultSettings, asOf: null, row, point, fit: motorDimensions(candidate) };
  return ask(set, candidate, read as Context);
}
