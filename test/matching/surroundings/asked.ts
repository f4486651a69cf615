import type { Context } from '@/lib/matching/context';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import type { Criterion } from '@/lib/matching/criterion';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';

/** The answer of one question, with as much of the context as the questions of the surroundings read. */
export function asked(ask: Criterion, set: PumpSet, candidate: Motor): Finding | null {
  const read: Partial<Context> = {
    settings: defaultSettings,
    asOf: null,
    row: ratingRowOf(set, candidate),
    fit: motorDimensions(candidate),
    failedFit: set.failed === null ? null : motorDimensions(set.failed),
  };
  return ask(set, candidate, read as Context);
}
