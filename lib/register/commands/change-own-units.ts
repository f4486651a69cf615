import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Units } from '@/lib/fields/field';
import { type Refused, refused } from './refused';

export const UNITS: readonly Units[] = ['metric', 'us'];

/** In which units a person reads and types. */
export async function changeOwnUnits(actor: Actor, units: Units): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'self.manage');
  const { siteId, userId: id } = actor;
  if (!UNITS.includes(units)) return refused('units', 'must be metric or us');
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' }> => {
    const before = await tx.user.findFirstOrThrow({ where: { siteId, id }, select: { units: true } });
    if (before.units === units) return { outcome: 'saved' };
    await tx.user.update({ where: { id }, data: { units } });
    await record(tx, actor, { action: 'person.units', thing: 'person', thingId: id, before, after: { units } });
    return { outcome: 'saved' };
  });
}
