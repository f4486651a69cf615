import { db } from '@/lib/db/client';
import type { Measured } from '@/lib/energy/measured';
import { type MeasuredFigures, measuredOf } from '@/lib/energy/read-measured';

/** What was read at a set last. */
export interface NewestMeasurement {
  measurementId: string;
  /** The motor that was in the set; null: none. */
  motorId: string | null;
  at: Date;
  measured: Measured;
}

/** How far the measurements of a site were known: they are only ever added to. */
export interface MeasurementsKnown {
  count: number;
  bySet: ReadonlyMap<string, NewestMeasurement>;
}

/** The newest measurement of each set of a site, by the set's id; what was told later counts of two of one moment. */
export async function newestMeasurements(siteId: string, before: MeasurementsKnown | null): Promise<MeasurementsKnown> {
  const count = await db.measurement.count({ where: { siteId } });
  if (before?.count === count) return before;
  const rows = await db.$queryRaw<
    ({ id: string; setId: string; motorId: string | null; at: Date } & MeasuredFigures)[]
  >`
    SELECT DISTINCT ON (set_id) id::text, set_id::text AS "setId", motor_id::text AS "motorId", at,
      volts_l1_l2 AS "voltsL1L2", volts_l2_l3 AS "voltsL2L3", volts_l3_l1 AS "voltsL3L1",
      amps_l1 AS "ampsL1", amps_l2 AS "ampsL2", amps_l3 AS "ampsL3",
      input_kw AS "inputKw", power_factor AS "powerFactor", rpm, hertz
    FROM measurement WHERE site_id = ${siteId}::uuid ORDER BY set_id, at DESC, told_at DESC, id`;
  const bySet = new Map(
    rows.map(({ id, setId, motorId, at, ...told }) => {
      const known = before?.bySet.get(setId);
      const newest = { measurementId: id, motorId, at, measured: measuredOf(told) };
      return [setId, known?.measurementId === id ? known : newest];
    }),
  );
  return { count, bySet };
}
