import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { lookAlikeOf, normOf } from '@/lib/plant/look-alike';

export interface NearTag {
  setId: string;
  tag: string;
  /** Nearest first: the same but for its signs, the same to a hurried eye, its beginning, nearly it. */
  how: 'tag' | 'look-alike' | 'begins' | 'near';
  /** Typing errors between the two, look-alikes forgiven. */
  errors: number;
}

/** Of tags that look nearly right, as many as are weighed one by one. */
const WEIGHED = 200;

/** The tags most like what was typed, nearest first. Empty when nothing is like it. */
export async function nearestTags(actor: Actor, typed: string, most = 5): Promise<NearTag[]> {
  must(actor, 'register.read');
  const [norm, look] = [normOf(typed).slice(0, 60), lookAlikeOf(typed).slice(0, 60)];
  if (norm === '') return [];
  const { siteId } = actor;
  const limit = Math.min(most, 100);
  return db.$queryRaw<NearTag[]>`
    WITH near AS (
      (SELECT id, tag, norm, look_alike FROM pump_set
        WHERE site_id = ${siteId}::uuid AND retired_at IS NULL AND norm = ${norm})
      UNION
      (SELECT id, tag, norm, look_alike FROM pump_set
        WHERE site_id = ${siteId}::uuid AND retired_at IS NULL AND look_alike LIKE ${look} || '%'
        ORDER BY norm LIMIT ${WEIGHED})
      UNION
      (SELECT id, tag, norm, look_alike FROM pump_set
        WHERE site_id = ${siteId}::uuid AND retired_at IS NULL AND (norm % ${norm} OR look_alike % ${look})
        ORDER BY greatest(similarity(norm, ${norm}), similarity(look_alike, ${look})) DESC, norm LIMIT ${WEIGHED})
    ), weighed AS (
      SELECT id::text AS "setId", tag, norm,
        levenshtein(look_alike, ${look}) AS errors,
        greatest(similarity(norm, ${norm}), similarity(look_alike, ${look})) AS likeness,
        CASE WHEN norm = ${norm} THEN 'tag'
          WHEN look_alike = ${look} THEN 'look-alike'
          WHEN norm LIKE ${norm} || '%' OR look_alike LIKE ${look} || '%' THEN 'begins'
          ELSE 'near' END AS how
      FROM near
    )
    SELECT "setId", tag, how, errors FROM weighed
    ORDER BY array_position(ARRAY['tag', 'look-alike', 'begins', 'near'], how), errors, likeness DESC, norm
    LIMIT ${limit}`;
}
