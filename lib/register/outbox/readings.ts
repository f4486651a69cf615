import { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import type { ReadingsBody } from '@/lib/offline/outbox';
import { read } from '@/lib/plant/reading';
import { told } from '@/lib/plant/told';
import { addReadings } from '../commands/add-readings';
import { readingsRequest } from '../commands/readings-request';
import { refused } from '../commands/refused';
import { swapOfKey } from '../queries/swap-of-key';
import type { Carried, Carrier, Sent } from './carrier';
import { inBody } from './in-body';

const { readings, takenAt } = readingsRequest.shape;
const body = z.strictObject({
  ...{ swapId: told(z.uuid()), swapKey: told(z.uuid()), readings, takenAt },
}) satisfies z.ZodType<ReadingsBody>;

/** Readings that were taken without a network, of a swap of the register or of one that waited before them. */
export const readingsCarrier: Carrier = {
  action: 'swap.record',
  mostMb: 1,
  async carryOut(actor: Actor, { key, body: sent }: Sent): Promise<Carried> {
    const said = read(body, sent);
    if (!said.ok) return inBody(said.problems);
    const { swapKey, ...readings } = said.value;
    const swapId = readings.swapId ?? (swapKey === null ? null : await swapOfKey(actor, swapKey));
    if (swapId === null) return inBody(refused('swapKey', 'is not the key of a swap of this site').problems);
    const done = await addReadings(actor, { ...readings, key, swapId });
    switch (done.outcome) {
      case 'saved':
        return { outcome: 'saved', id: done.readingsId, isRepeat: done.isRepeat };
      case 'refused':
        return inBody(done.problems);
    }
  },
};
