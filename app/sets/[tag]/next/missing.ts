import { candidatesPath, motorEditPath, setEditPath } from '@/app/paths';
import { leastKwOf } from '@/lib/matching/buy/least-kw';
import { failedRowOf } from '@/lib/matching/context/driven-load';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { Assumption } from './assumptions';

/** Something that nobody told, and where it is entered. */
export interface Missing {
  what: string;
  /** The words of the place, and its address; null: on this page. */
  where: string;
  href: string | null;
}

/** What the sums of this set lack, each with the field to fill. Empty: nothing. */
export function missingOf(
  set: PumpSet,
  tag: string,
  criticality: number | null,
  settings: SiteSettings,
  assumptions: readonly Assumption[],
  mayEdit: boolean,
): Missing[] {
  const where = `in the set ${tag}, Edit this set`;
  const inSet = (what: string): Missing => ({ what, where, href: mayEdit ? setEditPath(tag) : null });
  const missing: Missing[] = [];
  if (set.load.shaftKw === null) missing.push(inSet('the pump’s power at its greatest duty, kW'));
  if (set.load.kind === null) missing.push(inSet('the kind of load: constant torque, or with the square of speed'));
  if (set.load.atPumpRpm === null) missing.push(inSet('the pump speed at that power, rpm'));
  if (criticality === null) missing.push(inSet('how critical the set is: the cost of an hour down goes by it'));
  if (leastKwOf(set) === null)
    missing.push({ what: 'what could be bought', where: 'in the candidates of the set', href: candidatesPath(tag) });
  const { failed } = set;
  if (failed !== null) {
    const inMotor = (what: string): Missing => ({
      what,
      where: `on the plate of motor ${failed.id}`,
      href: mayEdit ? motorEditPath(failed.id) : null,
    });
    const row = failedRowOf(set)?.plate ?? null;
    if (row === null) missing.push(inMotor('a rating at the set’s volts and hertz'));
    else {
      if (row.kw === null) missing.push(inMotor('its rated power'));
      if (row.rpm === null) missing.push(inMotor('its full-load speed, rpm'));
      if (row.efficiencyPct === null && settings.unprintedClass === null)
        missing.push(inMotor('its efficiency, or in the site’s settings the class such a motor counts as'));
    }
  }
  for (const { label, from, name } of assumptions) {
    if (from !== 'nobody') continue;
    const isOfSite = !ONLY_HERE.has(name) && name !== 'down';
    missing.push({
      what: label,
      where: isOfSite ? 'in the site’s settings, or below' : 'below',
      href: isOfSite ? '/site' : null,
    });
  }
  return missing;
}

/** Prices that no site keeps: they are asked of a supplier each time. */
const ONLY_HERE = new Set(['shelf', 'ie2', 'ie3', 'ie4', 'repair']);
