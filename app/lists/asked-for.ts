import { PLACES } from '@/lib/plant/whereabouts';
import { RULES, type RuleId } from '@/lib/plausibility/doubt';
import { COVER_MOTOR_STATES, COVER_SORTS, type CoverFilter, type CoverMotorFilter } from '@/lib/register/cover-filter';
import { isId } from '@/lib/register/is-id';
import { ALL_MOTORS, MOTOR_SORTS, type MotorFilter } from '@/lib/register/motor-filter';
import { ALL_SETS, SET_CONDITIONS, SET_SORTS, type SetFilter } from '@/lib/register/set-filter';
import { COVER_STATES } from '@/lib/spares/cover/set-standing';
import { readNumber } from '@/lib/units/read-number';

/** The question in a page's address. */
export type Query = Record<string, string | string[] | undefined>;

/** The text under a name, without blanks around it; null: none. */
export const one = (query: Query, name: string): string | null => {
  const value = query[name];
  const text = Array.isArray(value) ? value[0] : value;
  return text === undefined || text.trim() === '' ? null : text.trim().slice(0, 200);
};
/** The one of these values that the text is; null: none of them. */
export const among = <const T extends string>(values: readonly T[], text: string | null): T | null =>
  values.find((value) => value === text) ?? null;
const id = (text: string | null) => (text !== null && isId(text) ? text : null);
function figure(text: string | null, max: number): number | null {
  const read = text === null ? null : readNumber(text, { min: 1, max });
  return read?.ok ? read.value : null;
}

/** Which sets the address asks for. What is not understood is not asked. */
export function setsAsked(query: Query): SetFilter {
  const sort = among(SET_SORTS, one(query, 'sort'));
  return {
    q: one(query, 'q'),
    areaId: id(one(query, 'area')),
    criticality: figure(one(query, 'criticality'), 4),
    condition: among(SET_CONDITIONS, one(query, 'condition')),
    volts: figure(one(query, 'volts'), 15_000),
    sort: sort ?? ALL_SETS.sort,
    isDown: one(query, 'down') === '1',
  };
}

/** Which motors the address asks for. */
export function motorsAsked(query: Query): MotorFilter {
  const sort = among(MOTOR_SORTS, one(query, 'sort'));
  return {
    q: one(query, 'q'),
    place: among(PLACES, one(query, 'place')),
    shelfId: id(one(query, 'shelf')),
    volts: figure(one(query, 'volts'), 15_000),
    poles: figure(one(query, 'poles'), 64),
    isRetired: one(query, 'retired') === '1',
    sort: sort ?? ALL_MOTORS.sort,
    isDown: one(query, 'down') === '1',
  };
}

/** Which sets of the cover the address asks for. */
export function coverAsked(query: Query): CoverFilter {
  return {
    q: one(query, 'q'),
    areaId: id(one(query, 'area')),
    criticality: figure(one(query, 'criticality'), 4),
    state: among(COVER_STATES, one(query, 'state')),
    sort: among(COVER_SORTS, one(query, 'sort')) ?? 'criticality',
    isDown: one(query, 'down') === '1',
  };
}

/** Which shelf motors of the cover the address asks for, and the use of which one is thought through. */
export function coverMotorsAsked(query: Query): CoverMotorFilter & { used: string | null } {
  return {
    q: one(query, 'q'),
    state: among(COVER_MOTOR_STATES, one(query, 'state')),
    used: one(query, 'used'),
  };
}

/** Which rule's doubts the address asks for; null: those of every rule. */
export const ruleAsked = (query: Query): RuleId | null => among(RULES, one(query, 'rule'));

/** Anything that is no page of a list is its first. */
export const pageAsked = (query: Query): number => {
  const text = one(query, 'page');
  return text !== null && /^[1-9]\d{0,3}$/.test(text) ? Number(text) : 1;
};

/** The names a list's question is made of, without its page. */
export const LIST_NAMES = {
  '/sets': ['q', 'area', 'criticality', 'condition', 'volts', 'sort', 'down'],
  '/motors': ['q', 'place', 'shelf', 'volts', 'poles', 'retired', 'sort', 'down'],
  '/doubts': ['rule'],
  '/cover': ['q', 'area', 'criticality', 'state', 'sort', 'down'],
  '/cover/matrix': ['q', 'area', 'criticality', 'state', 'sort', 'down'],
  '/cover/motors': ['q', 'state', 'used'],
  '/review': ['q', 'rule', 'area', 'criticality', 'urgency', 'state', 'sort', 'group'],
} as const;
export type ListPath = keyof typeof LIST_NAMES;

/** The question as it stands, with some of it put otherwise; null takes a part out. */
export function questionWith(path: ListPath, query: Query, other: Record<string, string | null>): string {
  const params = new URLSearchParams();
  for (const name of [...LIST_NAMES[path], 'page']) {
    const value = Object.hasOwn(other, name) ? (other[name] ?? null) : name === 'page' ? null : one(query, name);
    if (value !== null) params.set(name, value);
  }
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}
