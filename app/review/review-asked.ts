import { isId } from '@/lib/register/is-id';
import { REVIEW_RULES, URGENCIES } from '@/lib/review/finding';
import { ALL_OPEN, GROUPINGS, NO_AREA, REVIEW_SORTS, type ReviewFilter, STATES } from '@/lib/review/list/review-filter';
import { among, one, type Query } from '../lists/asked-for';

/** Which findings the address asks for. What is not understood is not asked. */
export function reviewAsked(query: Query): ReviewFilter {
  const area = one(query, 'area');
  const criticality = one(query, 'criticality');
  return {
    rule: among(REVIEW_RULES, one(query, 'rule')),
    areaId: area !== null && (area === NO_AREA || isId(area)) ? area : null,
    criticality: criticality !== null && /^[1-4]$/.test(criticality) ? Number(criticality) : null,
    urgency: among(URGENCIES, one(query, 'urgency')),
    state: among(STATES, one(query, 'state')) ?? ALL_OPEN.state,
    q: one(query, 'q'),
    sort: among(REVIEW_SORTS, one(query, 'sort')) ?? ALL_OPEN.sort,
    group: among(GROUPINGS, one(query, 'group')),
  };
}
