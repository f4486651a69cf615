import { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import { VERDICTS } from '@/lib/matching/verdict';
import { type JudgedAtPump, OUTBOX_VERSION, type SwapBody } from '@/lib/offline/outbox';
import { read } from '@/lib/plant/reading';
import { fromZeroTo, told } from '@/lib/plant/told';
import { noteOvertaken } from '../commands/note-overtaken';
import { recordJudgedSwap } from '../commands/record-judged-swap';
import { swapRequest } from '../commands/swap-request';
import type { Carried, Carrier, Sent } from './carrier';
import { inBody } from './in-body';

const judged = z.strictObject({
  verdict: z.enum(VERDICTS),
  hours: fromZeroTo(1_000),
  at: z.iso.datetime({ offset: true }),
});

const { key: _key, ...asked } = swapRequest.shape;
const today = z.strictObject({ ...asked, judged: told(judged) }) satisfies z.ZodType<SwapBody>;

/** Version 1: before it was told how the phone had judged, and what was read at the pump. */
const before = swapRequest
  .pick({
    ...{ setId: true, motorInId: true, motorOutId: true, fromSetId: true, outTo: true, why: true, note: true },
    ...{ workDone: true, checks: true, insulationMohm: true, overloadA: true, shimsPresentMm: true, doneAt: true },
  })
  .transform((told) => ({ ...told, judged: null }));

/** A swap that was made without a network. The motor is in: what the register makes of it is kept, and refuses nothing. */
export const swapCarrier: Carrier = {
  action: 'swap.record',
  mostMb: 1,
  async carryOut(actor: Actor, { version, key, body }: Sent): Promise<Carried> {
    const said = version === OUTBOX_VERSION ? read(today, body) : read(before, body);
    if (!said.ok) return inBody(said.problems);
    const { judged: atPump, ...swap } = said.value;
    const request = swapRequest.parse({ ...swap, key });
    const noted = { ...request, note: [request.note, pumpLine(atPump)].filter((line) => line !== null).join('\n') };
    const done = await recordJudgedSwap(actor, noted, true);
    switch (done.outcome) {
      case 'saved':
        return { outcome: 'saved', id: done.swapId, isRepeat: done.isRepeat };
      case 'taken':
        await noteOvertaken(actor, noted);
        return done;
      case 'refused':
        return inBody(done.problems);
    }
  },
};

/** The same for the same message, however often it is sent: it is part of what the request says. */
function pumpLine(atPump: JudgedAtPump | null): string {
  if (atPump === null) return 'Recorded at the pump. How it was judged there is not known.';
  const at = new Date(atPump.at).toISOString().slice(0, 16).replace('T', ' ');
  const hours = atPump.hours === null ? '' : `, ${atPump.hours} h`;
  return `Recorded at the pump from a snapshot of ${at} UTC, judged there as “${atPump.verdict.replaceAll('-', ' ')}”${hours}.`;
}
