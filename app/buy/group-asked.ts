import type { Query } from '@/app/lists/asked-for';
import { oneLine } from '@/app/paths';
import { MOST_IN_GROUP } from '@/lib/register/queries/group-of-sets';

/** For which sets the address asks one motor, and on which rating; null: the one that serves most. */
export interface GroupAsked {
  tags: string[];
  ids: string[];
  rating: string | null;
}

export function groupAsked(query: Query): GroupAsked {
  // What is typed into the form has commas between tags; a tag of the address stands as it is.
  const typed = told(query.add).flatMap((text) => text.split(','));
  const tags = [...told(query.tag), ...typed].map(oneLine);
  const [rating] = told(query.rating).map(oneLine);
  return {
    tags: [...new Set(tags)].filter((tag) => tag !== '').slice(0, MOST_IN_GROUP),
    ids: told(query.id).slice(0, MOST_IN_GROUP),
    rating: rating === undefined || rating === '' ? null : rating,
  };
}

const told = (value: string | string[] | undefined): string[] =>
  value === undefined ? [] : (Array.isArray(value) ? value : [value]).slice(0, 4 * MOST_IN_GROUP);

/** The question for these sets and this rating. */
export const groupQuestion = (tags: readonly string[], rating: string | null): string =>
  `?${new URLSearchParams([...tags.map((tag) => ['tag', tag]), ...(rating === null ? [] : [['rating', rating]])])}`;
