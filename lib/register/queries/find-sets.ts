import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { SET_LINE, type SetLine, setLineOf } from '../set-line';
import { nearestTags } from './nearest-tags';

export interface FoundSet extends SetLine {
  how: 'tag' | 'look-alike' | 'begins' | 'near' | 'words';
}

/** As many as one answer holds. */
const MOST = 50;
/** A tag with more errors than this share of its length is another tag. */
const ERRORS_PER_LETTER = 0.4;

/**
 * The sets that what was typed may mean: by tag (exact, look-alike letters, beginning), then by the words of
 * service, area and pump, then by a tag typed wrong. At most fifty, likeliest first.
 */
export async function findSets(actor: Actor, typed: string, most = 25): Promise<FoundSet[]> {
  must(actor, 'register.read');
  const limit = Math.min(most, MOST);
  const tags = await nearestTags(actor, typed, limit);
  const sure = tags.filter(({ how }) => how !== 'near');
  const fitting = await byWords(actor, typed, limit);
  const words = fitting.length > 0 ? fitting : await byMistypedWords(actor, typed, limit);
  const near = tags.filter(
    ({ how, errors, tag }) => how === 'near' && errors <= Math.ceil(tag.length * ERRORS_PER_LETTER),
  );
  const order = new Map<string, FoundSet['how']>();
  for (const { setId, how } of [...sure, ...words, ...near]) if (!order.has(setId)) order.set(setId, how);
  const ids = [...order.keys()].slice(0, limit);
  const rows = await db.pumpSet.findMany({ where: { siteId: actor.siteId, id: { in: ids } }, include: SET_LINE });
  const lines = new Map(rows.map((row) => [row.id, setLineOf(row)]));
  return ids.flatMap((id) => {
    const [line, how] = [lines.get(id), order.get(id)];
    return line && how ? [{ ...line, how }] : [];
  });
}

/** Sets whose words hold every word typed, each perhaps a little wrong; the best fit first. */
async function byWords({ siteId }: Actor, typed: string, limit: number) {
  const asked = wordsOf(typed);
  if (asked.length === 0) return [];
  return db.$queryRaw<{ setId: string; how: 'words' }[]>`
    SELECT s.id::text AS "setId", 'words' AS how
    FROM pump_set AS s
    WHERE s.site_id = ${siteId}::uuid AND s.retired_at IS NULL AND ${asked[0]} <% s.words
      AND (SELECT bool_and(word <% s.words) FROM unnest(${asked}::text[]) AS word)
    ORDER BY (SELECT sum(word_similarity(word, s.words)) FROM unnest(${asked}::text[]) AS word) DESC, s.norm
    LIMIT ${limit}`;
}

/** As `byWords`, where no word is like enough in its trigrams: each may have one letter wrong, or two changed over. */
async function byMistypedWords({ siteId }: Actor, typed: string, limit: number) {
  const asked = wordsOf(typed).filter((word) => word.length >= 4 && word.length <= 40);
  if (asked.length === 0) return [];
  return db.$queryRaw<{ setId: string; how: 'words' }[]>`
    SELECT s.id::text AS "setId", 'words' AS how
    FROM pump_set AS s
    WHERE s.site_id = ${siteId}::uuid AND s.retired_at IS NULL AND (
      SELECT bool_and(EXISTS (
        SELECT FROM regexp_split_to_table(s.words, '[^[:alnum:]]+') AS held
        WHERE length(held) BETWEEN 3 AND 40 AND CASE levenshtein_less_equal(held, word, 2)
          WHEN 0 THEN true
          WHEN 1 THEN true
          WHEN 2 THEN ARRAY(SELECT unnest(string_to_array(held, NULL)) ORDER BY 1)
            = ARRAY(SELECT unnest(string_to_array(word, NULL)) ORDER BY 1)
          ELSE false END))
      FROM unnest(${asked}::text[]) AS word)
    ORDER BY s.norm
    LIMIT ${limit}`;
}

const wordsOf = (typed: string): string[] => (typed.toLowerCase().match(/[\p{L}\p{N}]{3,}/gu) ?? []).slice(0, 6);
