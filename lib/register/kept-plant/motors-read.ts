import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { MOTOR_ROW, motorOfRow } from '../motor-row';
import { known as knownPlace } from '../whereabouts';
import type { KeptMotor } from './kept-plant';

export interface MotorRead {
  /** The versions of all rows it was made of. */
  of: string;
  motor: KeptMotor;
}

const SHELF = { select: { id: true, version: true, store: { select: { version: true } } } } as const;
const HEAD = { id: true, version: true, shelf: SHELF, retiredAt: true } as const;

/** What those of the ids are that have another version than the one known; null: such a one is retired or gone. */
export async function motorsRead(
  tx: Tx,
  siteId: string,
  ids: readonly string[],
  known: ReadonlyMap<string, MotorRead>,
): Promise<Map<string, MotorRead | null>> {
  const heads = await tx.motor.findMany({ where: { siteId, id: { in: [...ids] } }, select: HEAD });
  const ofAll = new Map(heads.map((head) => [head.id, head.retiredAt === null ? versionsOf(head) : null]));
  const read = new Map<string, MotorRead | null>();
  for (const id of ids) if ((ofAll.get(id) ?? null) === null) read.set(id, null);
  const changed = [...ofAll].flatMap(([id, of]) => (of === null || known.get(id)?.of === of ? [] : [id]));
  if (changed.length === 0) return read;
  const rows = await tx.motor.findMany({
    where: { siteId, id: { in: changed } },
    include: { ...MOTOR_ROW, shelf: { include: { store: true } } },
  });
  for (const row of rows) {
    const { id, version, place, setId, shelf, maker, condition, rewinds } = row;
    read.set(id, {
      of: versionsOf(row),
      motor: {
        ...{ motorId: id, version, motor: motorOfRow(row), place: knownPlace(place), setId, maker, condition, rewinds },
        store: shelf?.store.name ?? null,
        shelf: shelf?.name ?? null,
      },
    });
  }
  return read;
}

const versionsOf = ({
  version,
  shelf,
}: Pick<Prisma.MotorGetPayload<{ select: typeof HEAD }>, 'version' | 'shelf'>): string =>
  shelf === null ? `${version}` : `${version}|${shelf.id} ${shelf.version} ${shelf.store.version}`;
