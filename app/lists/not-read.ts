import { one, type Query } from './asked-for';

/** What can stand in a list's address, by its name there, as a person calls it. */
const WORDS = {
  sort: 'sort',
  area: 'area',
  criticality: 'criticality',
  condition: 'state',
  state: 'state',
  place: 'place',
  shelf: 'shelf',
  volts: 'voltage',
  poles: 'number of poles',
  rule: 'kind of finding',
  urgency: 'urgency',
  group: 'grouping',
  days: 'number of days',
  from: 'first day',
  to: 'last day',
  change: 'change',
} as const;
export type AskedName = keyof typeof WORDS;

/** What was read under a name: null is nothing; where the list always has one, that one and how to call it. */
export type Read = string | number | null | { value: string; words: string };

export interface NotRead {
  /** "sort". */
  word: string;
  /** As it stands in the address. */
  typed: string;
  /** What is shown in its place: "by tag". */
  shown: string;
}

/** What the address asks and the list does not know, in the order of `read`. What is not asked is not told. */
export function notRead(query: Query, read: Readonly<Partial<Record<AskedName, Read>>>): NotRead[] {
  const found: NotRead[] = [];
  for (const [name, value] of Object.entries(read) as [AskedName, Read][]) {
    const typed = one(query, name);
    if (typed === null) continue;
    if (value === null) found.push({ word: WORDS[name], typed, shown: 'any' });
    else if (typeof value === 'object' && value.value !== typed)
      found.push({ word: WORDS[name], typed, shown: value.words });
  }
  return found;
}
