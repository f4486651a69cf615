import type { OutboxMessage } from './outbox';
import type { PlantInHand } from './plant-in-hand';

/** The plant as it will be when what waits has gone in: a motor that was put in stands where it was put. */
export function withWaiting(plant: PlantInHand, messages: readonly OutboxMessage[]): PlantInHand {
  const swaps = messages.filter(isSwap);
  if (swaps.length === 0) return plant;
  const motors = new Map(plant.motors);
  const sets = new Map(plant.sets);
  for (const { body } of swaps) {
    const { setId, motorInId, motorOutId, outTo } = body;
    const out = motorOutId === null ? undefined : motors.get(motorOutId);
    if (out !== undefined && outTo !== null)
      motors.set(out.id, {
        ...out,
        place: outTo.place,
        setId: null,
        shelfId: outTo.place === 'on-shelf' ? outTo.shelfId : null,
        store: null,
        shelf: null,
      });
    const taken = motors.get(motorInId);
    if (taken !== undefined)
      motors.set(taken.id, { ...taken, place: 'in-set', setId, shelfId: null, store: null, shelf: null });
    const set = sets.get(setId);
    if (set !== undefined) sets.set(setId, { ...set, faults: [] });
  }
  return { sets, motors };
}

const isSwap = (message: OutboxMessage): message is OutboxMessage<'swap'> => message.kind === 'swap';
