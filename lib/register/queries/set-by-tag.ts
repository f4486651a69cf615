import type { Actor } from '@/lib/auth/may';
import { must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { faultText } from '@/lib/plant/fault';
import type { PumpSet } from '@/lib/plant/set';
import { literal } from '../literal';
import { SET_ROW, type SetRow, setOfRow } from '../set-row';

export interface OpenFault {
  id: string;
  /** What was seen and said, in one line. */
  says: string;
  at: Date;
  by: string;
}

export interface KnownSet {
  row: SetRow;
  /** As the judgement takes it; `failed` is the motor now in it. */
  set: PumpSet;
  /** The faults still open, newest first. */
  faults: OpenFault[];
}

/** The set with exactly this tag, in any case of letters; null when the actor's site has none. */
export async function setByTag(actor: Actor, tag: string): Promise<KnownSet | null> {
  must(actor, 'register.read');
  const rows = await db.pumpSet.findMany({
    where: { siteId: actor.siteId, tag: { equals: literal(tag.trim()), mode: 'insensitive' } },
    include: {
      ...SET_ROW,
      faults: {
        where: { closedAt: null },
        orderBy: { at: 'desc' },
        take: 10,
        include: { by: { select: { name: true } } },
      },
    },
    take: 10,
  });
  const found = rows.find((row) => row.tag === tag.trim()) ?? rows[0];
  if (!found) return null;
  const { faults, ...row } = found;
  return {
    row,
    set: setOfRow(row),
    faults: faults.map((fault) => ({ id: fault.id, says: faultText(fault), at: fault.at, by: fault.by.name })),
  };
}
