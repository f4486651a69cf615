import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { MEASURED_FIELDS, type MeasuredFigures } from '@/lib/energy/read-measured';
import { isId } from '../is-id';

/** What was read at a set, by whom and when. */
export interface KnownMeasurement {
  measurementId: string;
  at: Date;
  toldAt: Date;
  by: string;
  /** Plant number of the motor that was in the set; null: none. */
  motor: string | null;
  motorId: string | null;
  figures: MeasuredFigures;
  note: string | null;
}

/** The measurements of a set, newest first; of one moment the one told last. At most `most`. */
export async function measurements(actor: Actor, setId: string, most = 100): Promise<KnownMeasurement[]> {
  must(actor, 'register.read');
  if (!isId(setId)) return [];
  const rows = await db.measurement.findMany({
    where: { siteId: actor.siteId, setId },
    include: { by: { select: { name: true } }, motor: { select: { plantNumber: true } } },
    orderBy: [{ at: 'desc' }, { toldAt: 'desc' }, { id: 'asc' }],
    take: Math.min(most, 500),
  });
  return rows.map((row) => ({
    ...{ measurementId: row.id, at: row.at, toldAt: row.toldAt, by: row.by.name },
    ...{ motor: row.motor?.plantNumber ?? null, motorId: row.motorId, note: row.note },
    figures: Object.fromEntries(MEASURED_FIELDS.map(({ name }) => [name, row[name]])) as MeasuredFigures,
  }));
}
