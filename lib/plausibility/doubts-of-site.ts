import { siteRules } from './rules';
import type { OfMotor, SiteMotor } from './site-motor';

/** What cannot be right among all motors of a site, each with the motor it is about. */
export function doubtsOfSite(all: readonly SiteMotor[]): OfMotor[] {
  return siteRules.flatMap(([, ask]) => ask(all));
}
