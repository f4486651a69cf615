import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { FaultFilter } from './faults';

/** How long the sets of an area stood, over the faults closed in the days asked. */
export interface FaultTimes {
  /** Null: sets of no area. */
  area: string | null;
  count: number;
  /** Half of them were over sooner, ms from fault to running. */
  medianMs: number;
  longestMs: number;
}

/** Times from fault to running, area by area, the one with the most faults first. */
export async function faultTimes(actor: Actor, { areaId, days }: FaultFilter): Promise<FaultTimes[]> {
  must(actor, 'register.read');
  return db.$queryRaw<FaultTimes[]>`
    SELECT a.name AS area, count(*)::int AS count,
      1000 * (percentile_cont(0.5) WITHIN GROUP (ORDER BY t.stood))::float8 AS "medianMs",
      1000 * max(t.stood)::float8 AS "longestMs"
    FROM (
      SELECT s.area_id, extract(epoch FROM f.closed_at - f.at) AS stood
      FROM fault f JOIN pump_set s ON s.site_id = f.site_id AND s.id = f.set_id AND s.retired_at IS NULL
      WHERE f.site_id = ${actor.siteId}::uuid AND f.closed_at >= now() - make_interval(days => ${days}::int)
        AND (${areaId}::uuid IS NULL OR s.area_id = ${areaId}::uuid)
    ) t LEFT JOIN area a ON a.site_id = ${actor.siteId}::uuid AND a.id = t.area_id
    GROUP BY a.name ORDER BY count DESC, a.name`;
}
