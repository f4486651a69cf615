import type { z } from 'zod';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';
import { read } from '@/lib/plant/reading';
import { closeStep } from './close-step';
import { type CloseRequest, closeRequest } from './fault-request';
import { refused } from './refused';

export type CloseOutcome =
  | { outcome: 'saved'; faultIds: string[] }
  /** None of them is open any more: a swap, or somebody, was first. */
  | { outcome: 'closed-before'; faultId: string | null }
  | { outcome: 'refused'; problems: Problem[] };

/** Notes that a set runs again with the motor that stood in it: its open faults, or the one named, are closed. */
export async function closeFault(actor: Actor, asked: z.input<typeof closeRequest>): Promise<CloseOutcome> {
  must(actor, 'fault.close');
  const told = read(closeRequest, asked);
  if (!told.ok) return { outcome: 'refused', problems: told.problems };
  const { how, doneAt } = told.value;
  return db.$transaction(async (tx): Promise<CloseOutcome> => {
    const of = await meant(tx, actor, told.value);
    if (of === null) return refused(pathOf(told.value), 'is not in the register of this site');
    const faultIds = await closeStep(tx, actor, of, { by: 'repair', how, doneAt });
    return faultIds.length > 0 ? { outcome: 'saved', faultIds } : { outcome: 'closed-before', faultId: of.faultId };
  });
}

async function meant(tx: Tx, { siteId }: Actor, { setId, faultId, faultKey }: CloseRequest) {
  if (setId !== null) {
    const isThere = (await tx.pumpSet.count({ where: { siteId, id: setId } })) > 0;
    return isThere ? { setId, faultId: null } : null;
  }
  const fault = await tx.fault.findFirst({
    where: { siteId, ...(faultId === null ? { key: faultKey } : { id: faultId }) },
    select: { id: true, setId: true },
  });
  return fault && { setId: fault.setId, faultId: fault.id };
}

const pathOf = ({ setId, faultId }: CloseRequest) =>
  setId !== null ? 'setId' : faultId !== null ? 'faultId' : 'faultKey';
