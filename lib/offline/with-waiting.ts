import { faultText } from '@/lib/plant/fault';
import type { FaultBody, FaultClosedBody, OutboxMessage, SwapBody } from './outbox';
import type { PlantInHand } from './plant-in-hand';

/** Who told a fault that the register does not have yet. Its id is the key of its message. */
export const RECORDED_HERE = 'recorded on this phone';

/** The plant as it will be when what waits has gone in: a motor that was put in stands where it was put, a fault is open. */
export function withWaiting(plant: PlantInHand, messages: readonly OutboxMessage[]): PlantInHand {
  if (messages.length === 0) return plant;
  const next = { sets: new Map(plant.sets), motors: new Map(plant.motors) };
  for (const { kind, key, body } of messages) {
    if (kind === 'swap') swapIn(next, body as SwapBody);
    if (kind === 'fault') faultIn(next, key, body as FaultBody);
    if (kind === 'fault-closed') faultOut(next, body as FaultClosedBody);
  }
  return next;
}

function swapIn({ sets, motors }: PlantInHand, { setId, motorInId, motorOutId, outTo }: SwapBody) {
  const nowhere = { setId: null, shelfId: null, store: null, shelf: null };
  const out = motorOutId === null ? undefined : motors.get(motorOutId);
  if (out !== undefined && outTo !== null) {
    const shelfId = outTo.place === 'on-shelf' ? outTo.shelfId : null;
    motors.set(out.id, { ...out, ...nowhere, place: outTo.place, shelfId });
  }
  const taken = motors.get(motorInId);
  if (taken !== undefined) motors.set(taken.id, { ...taken, ...nowhere, place: 'in-set', setId });
  const set = sets.get(setId);
  if (set !== undefined) sets.set(setId, { ...set, faults: [] });
}

function faultIn({ sets }: PlantInHand, key: string, { setId, seen, says, seenAt }: FaultBody) {
  const set = sets.get(setId);
  if (set === undefined || seenAt === null) return;
  const fault = { id: key, says: faultText({ seen, says }), at: seenAt, by: RECORDED_HERE };
  sets.set(setId, { ...set, faults: [fault, ...set.faults] });
}

function faultOut({ sets }: PlantInHand, { faultId, faultKey }: FaultClosedBody) {
  for (const set of sets.values()) {
    const left = set.faults.filter(({ id }) => id !== faultId && id !== faultKey);
    if (left.length < set.faults.length) sets.set(set.id, { ...set, faults: left });
  }
}
