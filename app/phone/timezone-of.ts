import type { Status } from './asked';
import type { Answer } from './use-ask';

/** The site's IANA time zone; until it is read, UTC. */
export const timezoneOf = (status: Answer<Status>): string =>
  status.state === 'here' && status.value.about !== null ? status.value.about.site.timezone : 'UTC';
