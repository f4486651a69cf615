import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { RepairFigures } from '@/lib/plant/repair-figures';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

export interface RepairTold {
  repairId: string;
  /** As it was read: a save over another's is refused. */
  version: number;
  figures: RepairFigures;
  /** Null: not decided yet. */
  decision: 'repair' | 'scrap' | null;
  why: string | null;
}

/** Keeps the figures of a repair, and what was decided by them, with who and why. */
export async function tellRepair(actor: Actor, told: RepairTold): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'repair.decide');
  const { siteId, userId } = actor;
  const { repairId: id, version, figures, decision, why } = told;
  if (why !== null && why.length > 500) return refused('why', 'must have at most 500 characters');
  if (!isId(id)) return refused('repairId', 'is not in the register of this site');
  return db.$transaction(async (tx) => {
    const before = await tx.repair.findUnique({ where: { siteId_id: { siteId, id } } });
    if (before === null) return refused('repairId', 'is not in the register of this site');
    if (before.endedAt !== null) return refused('repairId', 'has ended: the motor is back, or scrapped');
    const isDecided = decision !== null && (decision !== before.decision || why !== before.decidedWhy);
    const { count } = await tx.repair.updateMany({
      where: { siteId, id, version, endedAt: null },
      data: {
        ...{ figures, decidedWhy: why, decision },
        ...(decision === null && { decidedById: null, decidedAt: null }),
        ...(isDecided && { decidedById: userId, decidedAt: new Date() }),
      },
    });
    if (count === 0) return refused('repairId', 'was changed by somebody else meanwhile: open the page anew');
    await record(tx, actor, {
      ...{ action: isDecided ? 'repair.decide' : 'repair.figures', thing: 'motor', thingId: before.motorId },
      before: { decision: before.decision, decidedWhy: before.decidedWhy },
      after: { repairId: id, decision, decidedWhy: why },
    });
    return { outcome: 'saved' };
  });
}
