import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { readLabelCode } from '@/lib/plant/label-code';

export type Labelled = { thing: 'set'; tag: string } | { thing: 'motor'; number: string };

/** What the actor's site has under a label code, however it is written; null: nothing, or it is no label code. */
export async function byLabel(actor: Actor, written: string): Promise<Labelled | null> {
  must(actor, 'register.read');
  const read = readLabelCode(written);
  if (!read.ok) return null;
  const where = { siteId: actor.siteId, code: read.value };
  const [set, motor] = await Promise.all([
    db.pumpSet.findFirst({ where, select: { tag: true } }),
    db.motor.findFirst({ where, select: { plantNumber: true } }),
  ]);
  if (set !== null) return { thing: 'set', tag: set.tag };
  return motor === null ? null : { thing: 'motor', number: motor.plantNumber };
}
