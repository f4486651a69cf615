import { type Actor, must } from '@/lib/auth/may';
import type { Measured } from '@/lib/energy/measured';
import { runningOf } from '@/lib/energy/running-of';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { asMeasured } from '@/lib/review/as-measured';
import { dutyLoadPct } from '@/lib/review/duty-load';
import { NOTHING_KNOWN } from '@/lib/review/known';
import { reviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import { type FoundRow, withAcceptances } from '../review/acceptances';
import { sparesOfSet } from '../review/spares-by-set';
import type { KnownSet } from './set-by-tag';

/**
 * What the review says of one set, judged for itself: nobody at a pump waits for the rest of the site. `read`: what
 * was measured there last, `isOfMotor`: of the motor that is in it. `today` is a day of the site.
 */
export async function reviewOfSet(
  actor: Actor,
  { row, set }: Pick<KnownSet, 'row' | 'set'>,
  { settings, read, isOfMotor, today }: { settings: SiteSettings; read: Measured; isOfMotor: boolean; today: string },
): Promise<FoundRow[]> {
  must(actor, 'review.read');
  if (row.siteId !== actor.siteId) return [];
  const known = {
    amps: isOfMotor ? read.amps : NOTHING_KNOWN.amps,
    spares: await sparesOfSet(actor.siteId, row.id, set),
  };
  const asked = reviewCase(asMeasured(set, read.volts), { settings, asOf: null }, known);
  if (asked === null) return [];
  const { id: setId, tag, service, areaId, area, criticality } = row;
  const head = { setId, tag, service, areaId, area: area?.name ?? null, criticality, motor: asked.motor.id };
  const loadPct = dutyLoadPct(asked, runningOf(asked.set, asked.motor, settings));
  const rows = reviewOf(asked).map((finding) => ({ ...head, loadPct, finding, isAccepted: false }));
  return withAcceptances(actor.siteId, rows, today, setId);
}
