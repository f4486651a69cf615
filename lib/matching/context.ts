import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { type BaseChange, baseChangeOf } from './context/base-change';
import { type Derating, deratingOf } from './context/derating';
import { type HubChange, hubChangeOf } from './context/hub-change';
import { type OperatingPoint, operatingPointOf } from './context/operating-point';
import { type RatingRow, ratingRowOf } from './context/rating-row';
import { type Seat, seatOf } from './context/seat';

/** What several criteria need, decided once for a set and a candidate. */
export interface Context {
  settings: SiteSettings;
  /** The day of the judgement, YYYY-MM-DD; null: nothing is said about shelf time. */
  asOf: string | null;
  /** What the set offers a motor. */
  seat: Seat;
  /** The candidate's own mounting: measured where a person measured, else the frame's. */
  fit: FrameDimensions;
  /** The failed motor's mounting; null when there is no plate. */
  failedFit: FrameDimensions | null;
  /** The candidate's rating row at the supply, re-rated where no plated row is for it. */
  row: RatingRow;
  derating: Derating;
  point: OperatingPoint;
  base: BaseChange;
  hub: HubChange;
}

export interface JudgedBy {
  settings: SiteSettings;
  asOf: string | null;
}

export function contextOf(set: PumpSet, candidate: Motor, { settings, asOf }: JudgedBy): Context {
  const fit = motorDimensions(candidate);
  const failedFit = set.failed === null ? null : motorDimensions(set.failed);
  const seat = seatOf(set);
  const row = ratingRowOf(set, candidate);
  const derating = deratingOf(set, candidate);
  const point = operatingPointOf(set, candidate, row);
  const base = baseChangeOf(set, fit, seat, settings);
  const hub = hubChangeOf(set, fit, seat);
  return { settings, asOf, seat, fit, failedFit, row, derating, point, base, hub };
}
