import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import type { PumpSet } from '@/lib/plant/set';
import { setOfRow } from '../set-row';
import type { KeptSet } from './kept-plant';

/** A set without the motor that is in it: that one is kept for itself. */
export interface SetRead {
  /** The versions of all rows it was made of. */
  of: string;
  head: Omit<KeptSet, 'set' | 'motorId'>;
  set: PumpSet;
}

const version = { select: { id: true, version: true } } as const;
const HEAD = { id: true, version: true, area: version, pump: version, supply: version, retiredAt: true } as const;

/** What those of the ids are that have another version than the one known; null: such a one is retired or gone. */
export async function setsRead(
  tx: Tx,
  siteId: string,
  ids: readonly string[],
  known: ReadonlyMap<string, SetRead>,
): Promise<Map<string, SetRead | null>> {
  const heads = await tx.pumpSet.findMany({ where: { siteId, id: { in: [...ids] } }, select: HEAD });
  const ofAll = new Map(heads.map((head) => [head.id, head.retiredAt === null ? versionsOf(head) : null]));
  const read = new Map<string, SetRead | null>();
  for (const id of ids) if ((ofAll.get(id) ?? null) === null) read.set(id, null);
  const changed = [...ofAll].flatMap(([id, of]) => (of === null || known.get(id)?.of === of ? [] : [id]));
  if (changed.length === 0) return read;
  const rows = await tx.pumpSet.findMany({
    where: { siteId, id: { in: changed } },
    include: { area: true, pump: true, supply: true },
  });
  for (const row of rows) read.set(row.id, readOf(row));
  return read;
}

function readOf(row: Prisma.PumpSetGetPayload<{ include: { area: true; pump: true; supply: true } }>): SetRead {
  const { id, version, tag, service, criticality, areaId, area, pump } = row;
  return {
    of: versionsOf(row),
    head: {
      ...{ setId: id, version, tag, service, criticality, areaId },
      area: area?.name ?? null,
      pump: pump?.description ?? null,
    },
    set: setOfRow({ ...row, motor: null }),
  };
}

type Versions = Pick<Prisma.PumpSetGetPayload<{ select: typeof HEAD }>, 'version' | 'area' | 'pump' | 'supply'>;
const versionsOf = ({ version, area, pump, supply }: Versions): string =>
  [version, ...[area, pump, supply].map((row) => (row === null ? '-' : `${row.id} ${row.version}`))].join('|');
