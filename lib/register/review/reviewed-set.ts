import type { RunningAtDuty } from '@/lib/energy/running-at-duty';
import { runningOf } from '@/lib/energy/running-of';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { asMeasured } from '@/lib/review/as-measured';
import { dutyLoadPct } from '@/lib/review/duty-load';
import type { ReviewFinding } from '@/lib/review/finding';
import { NOTHING_KNOWN } from '@/lib/review/known';
import { type ReviewCase, reviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import type { KeptSet } from '../kept-plant/kept-plant';
import type { NewestMeasurement } from './newest-measurement';

/** The motor in a set and how it runs there. */
export interface Standing {
  asked: ReviewCase;
  running: RunningAtDuty;
  /** At duty, of rated power; null: not known. */
  loadPct: number | null;
}

/** A set with what the review says of it. It is never changed: of a set that changed there is another one. */
export interface ReviewedSet {
  kept: KeptSet;
  /** What was read at it last, whichever motor was in it; null: nothing. */
  newest: NewestMeasurement | null;
  /** How many kinds of shelf motor could go in; null: it was not asked. */
  spares: number | null;
  /** Null: the set stands empty, and nothing is asked. */
  standing: Standing | null;
  /** In the order of the rules. */
  findings: readonly ReviewFinding[];
}

/** Judged without a day: of the motor in a set nothing hangs on how long it lay on a shelf. */
export function reviewedSet(
  kept: KeptSet,
  settings: SiteSettings,
  newest: NewestMeasurement | null,
  spares: number | null,
): ReviewedSet {
  const set = newest === null ? kept.set : asMeasured(kept.set, newest.measured.volts);
  const amps = newest !== null && newest.motorId === kept.motorId ? newest.measured.amps : NOTHING_KNOWN.amps;
  const asked = reviewCase(set, { settings, asOf: null }, { amps, spares });
  if (asked === null) return { kept, newest, spares, standing: null, findings: [] };
  const running = runningOf(asked.set, asked.motor, settings);
  return {
    kept,
    newest,
    spares,
    standing: { asked, running, loadPct: dutyLoadPct(asked, running) },
    findings: reviewOf(asked),
  };
}
