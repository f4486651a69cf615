import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Predicted } from '@/lib/job/predicted';
import type { Step } from '@/lib/job/step';
import { stepsOf } from '@/lib/job/steps';
import { isId } from '../is-id';
import { predictedFor, swappedOf } from '../predicted-for';

export interface JobOfSwap {
  setTag: string;
  motorIn: string;
  motorOut: string | null;
  at: Date;
  steps: Step[];
  predicted: Predicted;
}

/** The steps of a swap that was recorded, for readings told after it; null when the actor's site has none with this id. */
export async function jobOfSwap(actor: Actor, swapId: string): Promise<JobOfSwap | null> {
  must(actor, 'register.read');
  if (!isId(swapId)) return null;
  const swap = await db.swap.findUnique({
    where: { siteId_id: { siteId: actor.siteId, id: swapId } },
    select: { setId: true, motorInId: true, motorOutId: true, at: true },
  });
  if (!swap) return null;
  const { set, motor } = await swappedOf(db, actor, swap);
  const predicted = await predictedFor(db, actor, swap);
  return {
    ...{ setTag: set.tag, motorIn: motor.id, motorOut: set.failed === null ? null : set.failed.id, at: swap.at },
    ...{ predicted, steps: stepsOf(set, motor, predicted) },
  };
}
