import { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import type { FaultBody, FaultClosedBody } from '@/lib/offline/outbox';
import { SEEN } from '@/lib/plant/fault';
import { read } from '@/lib/plant/reading';
import { told } from '@/lib/plant/told';
import { closeFault } from '../commands/close-fault';
import { reportFault } from '../commands/report-fault';
import type { Carried, Carrier, Sent } from './carrier';
import { inBody } from './in-body';

const moment = told(z.string().max(40));
const words = z.string().max(2_000);

const fault = z.strictObject({
  ...{ setId: z.string(), seen: z.array(z.enum(SEEN)), says: told(words), seenAt: moment },
}) satisfies z.ZodType<FaultBody>;

const closed = z.strictObject({
  ...{ faultId: told(z.string()), faultKey: told(z.string()), how: words, doneAt: moment },
}) satisfies z.ZodType<FaultClosedBody>;

/** "It has failed", told without a network. The message’s key is the fault’s: what closes it may name it by that. */
export const faultCarrier: Carrier = {
  action: 'fault.report',
  mostMb: 1,
  async carryOut(actor: Actor, { key, body }: Sent): Promise<Carried> {
    const said = read(fault, body);
    if (!said.ok) return inBody(said.problems);
    const done = await reportFault(actor, { ...said.value, key });
    return done.outcome === 'saved'
      ? { outcome: 'saved', id: done.faultId, isRepeat: done.isRepeat }
      : inBody(done.problems);
  },
};

/** "It runs again". A fault that is closed already is as it should be, whoever closed it. */
export const faultClosedCarrier: Carrier = {
  action: 'fault.close',
  mostMb: 1,
  async carryOut(actor: Actor, { body }: Sent): Promise<Carried> {
    const said = read(closed, body);
    if (!said.ok) return inBody(said.problems);
    const done = await closeFault(actor, said.value);
    switch (done.outcome) {
      case 'saved':
        return { outcome: 'saved', id: done.faultIds.join(), isRepeat: false };
      case 'closed-before':
        return { outcome: 'saved', id: String(done.faultId), isRepeat: true };
      case 'refused':
        return inBody(done.problems);
    }
  },
};
