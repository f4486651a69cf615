import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { FAULT_AT, type FaultAt, faultAtOf } from '../fault-line';
import { SWAP_LINE, type SwapLine, swapLineOf } from '../history-line';

/** From the first moment of it to the first that is no more in it. */
export interface Span {
  from: Date;
  to: Date;
}

/** How long the sets of an area stood, over the faults that ended in the span. */
export interface SpanTimes {
  /** Null: sets of no area. */
  area: string | null;
  count: number;
  /** Half of them were over sooner, ms from fault to running. */
  medianMs: number;
  longestMs: number;
}

export interface EndedRepair {
  repairId: string;
  motor: string;
  /** The set it came out of; null: it was sent from a shelf. */
  setTag: string | null;
  reason: string;
  at: Date;
  endedAt: Date;
  /** repair or scrap; null: not decided. */
  decision: string | null;
}

export interface MonthReport {
  /** That began in the span, oldest first. */
  faults: FaultAt[];
  allFaults: number;
  /** Began before the end of the span and had not ended by then. */
  openAtEnd: number;
  /** Over all areas; null: none ended. */
  times: Omit<SpanTimes, 'area'> | null;
  byArea: SpanTimes[];
  swaps: SwapLine[];
  allSwaps: number;
  repairs: EndedRepair[];
  allRepairs: number;
}

/** What happened at the site in a span, whether or not the sets are still in use. At most `most` of each are listed. */
export async function monthReport(actor: Actor, { from, to }: Span, most = 500): Promise<MonthReport> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const within = { gte: from, lt: to };
  const began = { siteId, at: within };
  const ended = { siteId, endedAt: within };
  const [faults, allFaults, openAtEnd, times, byArea, swaps, allSwaps, repairs, allRepairs] = await Promise.all([
    db.fault.findMany({ where: began, include: FAULT_AT, orderBy: [{ at: 'asc' }, { id: 'asc' }], take: most }),
    db.fault.count({ where: began }),
    db.fault.count({ where: { siteId, at: { lt: to }, OR: [{ closedAt: null }, { closedAt: { gte: to } }] } }),
    timesOf(siteId, { from, to }),
    timesByArea(siteId, { from, to }),
    db.swap.findMany({ where: began, include: SWAP_LINE, orderBy: [{ at: 'asc' }, { id: 'asc' }], take: most }),
    db.swap.count({ where: began }),
    db.repair.findMany({
      where: ended,
      select: {
        ...{ id: true, reason: true, at: true, endedAt: true, decision: true },
        ...{ motor: { select: { plantNumber: true } }, swap: { select: { set: { select: { tag: true } } } } },
      },
      orderBy: [{ endedAt: 'asc' }, { id: 'asc' }],
      take: most,
    }),
    db.repair.count({ where: ended }),
  ]);
  return {
    ...{ faults: faults.map(faultAtOf), allFaults, openAtEnd, times, byArea },
    ...{ swaps: swaps.map(swapLineOf), allSwaps, allRepairs },
    repairs: repairs.flatMap(({ id, motor, swap, reason, at, endedAt, decision }) =>
      endedAt === null
        ? []
        : [{ repairId: id, motor: motor.plantNumber, setTag: swap?.set.tag ?? null, reason, at, endedAt, decision }],
    ),
  };
}

async function timesOf(siteId: string, { from, to }: Span): Promise<Omit<SpanTimes, 'area'> | null> {
  const [row] = await db.$queryRaw<Omit<SpanTimes, 'area'>[]>`
    SELECT count(*)::int AS count,
      1000 * (percentile_cont(0.5) WITHIN GROUP (ORDER BY extract(epoch FROM closed_at - at)))::float8 AS "medianMs",
      1000 * max(extract(epoch FROM closed_at - at))::float8 AS "longestMs"
    FROM fault WHERE site_id = ${siteId}::uuid AND closed_at >= ${from} AND closed_at < ${to}`;
  return row === undefined || row.count === 0 ? null : row;
}

const timesByArea = (siteId: string, { from, to }: Span) => db.$queryRaw<SpanTimes[]>`
  SELECT a.name AS area, count(*)::int AS count,
    1000 * (percentile_cont(0.5) WITHIN GROUP (ORDER BY extract(epoch FROM f.closed_at - f.at)))::float8 AS "medianMs",
    1000 * max(extract(epoch FROM f.closed_at - f.at))::float8 AS "longestMs"
  FROM fault f JOIN pump_set s ON s.site_id = f.site_id AND s.id = f.set_id
    LEFT JOIN area a ON a.site_id = s.site_id AND a.id = s.area_id
  WHERE f.site_id = ${siteId}::uuid AND f.closed_at >= ${from} AND f.closed_at < ${to}
  GROUP BY a.name ORDER BY count DESC, a.name`;
