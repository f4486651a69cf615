import type { SwapBody } from '@/lib/offline/outbox';
import type { SetHere } from './asked';

/** The swap that put in the motor which stands in the set now: of the register by its id, one that waits by its key. */
export interface LastSwap {
  swapId: string | null;
  swapKey: string | null;
  motorIn: string;
}

/** Null: none that lies on this phone. */
export function lastSwapOf({ set, motor, waiting }: Pick<SetHere, 'set' | 'motor' | 'waiting'>): LastSwap | null {
  if (motor === null) return null;
  const motorIn = motor.number;
  const waits = waiting.findLast(
    ({ message, state }) =>
      message.kind === 'swap' && state === 'waiting' && (message.body as SwapBody).motorInId === motor.id,
  );
  if (waits !== undefined) return { swapId: null, swapKey: waits.key, motorIn };
  const last = set.history.find((line) => line.kind === 'swap' && line.setTag === set.tag);
  if (last?.kind !== 'swap' || last.motorIn !== motorIn) return null;
  return { swapId: last.id, swapKey: null, motorIn };
}
