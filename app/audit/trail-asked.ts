import type { Query } from '@/app/lists/asked-for';
import { dayStart } from '@/app/moment';
import { isId } from '@/lib/register/is-id';
import { type TrailFilter, WHOLE_TRAIL } from '@/lib/register/queries/audit-trail';
import { actionsLike } from './action-words';

export const TRAIL_NAMES = ['who', 'did', 'thing', 'name', 'from', 'to', 'change'] as const;

const one = (query: Query, name: string): string | null => {
  const value = query[name];
  const text = (Array.isArray(value) ? value[0] : value)?.replaceAll(/\p{Cc}/gu, ' ').trim();
  return text === undefined || text === '' ? null : text.slice(0, 100);
};

/** Which part of the audit the address asks for; days are days where the site is. What is not understood is not asked. */
export function trailAsked(query: Query, timezone: string): TrailFilter {
  const change = one(query, 'change');
  const did = one(query, 'did');
  return {
    ...WHOLE_TRAIL,
    byId: one(query, 'who'),
    actions: did === null ? null : actionsLike(did),
    thing: one(query, 'thing'),
    name: one(query, 'name'),
    changeId: change !== null && isId(change) ? change : null,
    from: dayStart(one(query, 'from'), timezone, 0),
    to: dayStart(one(query, 'to'), timezone, 1),
  };
}

/** The question as it stands, with some of it put otherwise; null takes a part out. */
export function trailQuestion(query: Query, other: Record<string, string | null> = {}): string {
  const params = new URLSearchParams();
  for (const name of TRAIL_NAMES) {
    const value = Object.hasOwn(other, name) ? other[name] : one(query, name);
    if (value != null) params.set(name, value);
  }
  for (const [name, value] of Object.entries(other))
    if (value !== null && !TRAIL_NAMES.some((known) => known === name)) params.set(name, value);
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}
