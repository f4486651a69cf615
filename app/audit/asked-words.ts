import { one, type Query } from '@/app/lists/asked-for';
import { actionWords, THING_WORDS } from './action-words';

interface Understood {
  from: number | null;
  to: number | null;
  change: string | null;
}

/**
 * What of the audit was asked for, in words, part by part. `read`: days and change as they were understood. `people`:
 * those who can have done it.
 */
export function askedWords(
  query: Query,
  read: Understood,
  people: readonly { userId: string; name: string }[],
): (string | null)[] {
  const [who, thing, did] = [one(query, 'who'), one(query, 'thing'), one(query, 'did')];
  const [name, from, to] = [one(query, 'name'), one(query, 'from'), one(query, 'to')];
  return [
    who === null ? null : `by ${people.find(({ userId }) => userId === who)?.name ?? 'somebody not of this site'}`,
    thing === null ? null : (THING_WORDS[thing] ?? thing).toLowerCase(),
    did === null ? null : actionWords(did).toLowerCase(),
    name === null ? null : `tag or number ${name}`,
    read.from === null ? null : `from ${from}`,
    read.to === null ? null : `to ${to}`,
    read.change === null ? null : 'one change',
  ];
}
