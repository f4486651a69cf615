import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { lookAlikeOf } from '@/lib/plant/look-alike';
import type { Place } from '@/lib/plant/whereabouts';
import type { SiteMotor } from '@/lib/plausibility/site-motor';
import { WHEREABOUTS_ROW, whereaboutsOf } from '../whereabouts';

/** What tells motors of one site from each other. */
export const SITE_MOTOR_ROW = {
  ...{ id: true, version: true, plantNumber: true, maker: true, serial: true, place: true },
  ...WHEREABOUTS_ROW,
} as const satisfies Prisma.MotorSelect;

export type SiteMotorRow = Prisma.MotorGetPayload<{ select: typeof SITE_MOTOR_ROW }>;

export function siteMotorOf(row: Omit<SiteMotorRow, 'version'>): SiteMotor {
  const { place, setTag, store, shelf } = whereaboutsOf(row);
  return {
    id: row.id,
    number: row.plantNumber,
    maker: row.maker,
    serial: row.serial,
    place: placeWords(place, setTag, [store, shelf].filter(Boolean).join(' / ')),
  };
}

function placeWords(place: Place, setTag: string | null, shelf: string): string {
  switch (place) {
    case 'in-set':
      return `in ${setTag}`;
    case 'on-shelf':
      return `on ${shelf}`;
    case 'at-repair':
      return '(at repair)';
    case 'on-order':
      return '(on order)';
    case 'scrapped':
      return '(scrapped)';
  }
}

/** More than this are alike only by mistake of a whole list. */
const MOST_ALIKE = 200;

/** The motors that could be one with this: of a like number, or with the same serial number however it is written. */
export async function motorsAlike(
  tx: Tx,
  siteId: string,
  { id, plantNumber, serial }: { id: string; plantNumber: string; serial: string | null },
): Promise<SiteMotor[]> {
  const same = await tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM motor
    WHERE site_id = ${siteId}::uuid AND retired_at IS NULL AND (
      id = ${id}::uuid OR look_alike = ${lookAlikeOf(plantNumber)}
      OR upper(regexp_replace(serial, '[^[:alnum:]]', '', 'g')) = upper(regexp_replace(${serial}::text, '[^[:alnum:]]', '', 'g')))
    LIMIT ${MOST_ALIKE}`;
  const rows = await tx.motor.findMany({
    where: { siteId, id: { in: same.map((one) => one.id) } },
    select: SITE_MOTOR_ROW,
    orderBy: { plantNumber: 'asc' },
  });
  return rows.map(siteMotorOf);
}
