import type { Motor } from '@/lib/plant/motor';
import { INSULATION_CITE, leastInsulationMohm } from '@/lib/standards/least-insulation';
import { figure } from '@/lib/units/figure';

/** What the shelf does to a candidate: `test` asks for a test before use, `refused` keeps it from being offered. */
export interface SpareState {
  test: string | null;
  refused: string | null;
}

/**
 * A spare that was never tested, or was last tested or shelved over 24 months ago, is tested first; one whose winding
 * reads below the least insulation is not offered. Nothing is said about shelf time without a day, nor about a motor of
 * which the store tells nothing.
 */
export function spareState(motor: Motor, asOf: string | null): SpareState {
  return { test: asOf === null ? null : testBefore(motor.spare, asOf), refused: lowInsulation(motor) };
}

/** Common practice, no source: bearings are turned and windings read every other year at the latest. */
const SHELF_MONTHS = 24;

function testBefore({ shelvedOn, testedOn, insulationMohm }: Motor['spare'], asOf: string): string | null {
  if (shelvedOn === null && testedOn === null && insulationMohm === null) return null;
  if (testedOn === null)
    return shelvedOn === null ? 'No test is recorded' : `No test since it was shelved on ${shelvedOn}`;
  const latest = shelvedOn === null || shelvedOn < testedOn ? testedOn : shelvedOn;
  if (latest >= yearsBefore(asOf, SHELF_MONTHS / 12)) return null;
  return latest === testedOn ? `Last tested on ${testedOn}` : `On the shelf since ${shelvedOn}`;
}

/** Days are YYYY-MM-DD and compare as text; 29 February before a common year compares as its 28th plus one. */
const yearsBefore = (day: string, years: number) =>
  String(Number(day.slice(0, 4)) - years).padStart(4, '0') + day.slice(4);

function lowInsulation({ spare, ratings }: Motor): string | null {
  if (spare.insulationMohm === null) return null;
  let volts: number | null = null;
  for (const row of ratings) if (row.volts !== null && (volts === null || row.volts > volts)) volts = row.volts;
  // Untold volts take the rule of the small windings: the looser of the two, so that only the certain is refused.
  const least = leastInsulationMohm(volts === null ? 1 : volts);
  if (least === null || spare.insulationMohm >= least) return null;
  return `insulation ${figure(spare.insulationMohm)} MΩ is below ${figure(least)} MΩ (${INSULATION_CITE})`;
}
