import { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { PictureBody } from '@/lib/offline/outbox';
import { REFUSAL_WORDS } from '@/lib/picture/refusal';
import type { Problem } from '@/lib/plant/reading';
import { read } from '@/lib/plant/reading';
import { told } from '@/lib/plant/told';
import { keepPicture, LONGEST_CAPTION, type PictureOutcome } from '../commands/keep-picture';
import type { Carried, Carrier, Sent } from './carrier';
import { inBody } from './in-body';

/** The phone makes it small: 1,600 px along its longer side are under 1 MB as JPEG, a third more in base64. */
const MOST_MB = 6;

const picture = z.strictObject({
  faultKey: z.uuid(),
  caption: told(z.string().max(LONGEST_CAPTION)),
  base64: z.base64().max(MOST_MB * 1024 * 1024),
}) satisfies z.ZodType<PictureBody>;

/** A photograph of a fault that was told at the pump. The same picture is kept once, however often it is sent. */
export const pictureCarrier: Carrier = {
  action: 'picture.keep',
  mostMb: MOST_MB,
  async carryOut(actor: Actor, { body }: Sent): Promise<Carried> {
    const said = read(picture, body);
    if (!said.ok) return inBody(said.problems);
    const { faultKey, caption, base64 } = said.value;
    const fault = await db.fault.findUnique({
      where: { siteId_key: { siteId: actor.siteId, key: faultKey } },
      select: { id: true },
    });
    if (fault === null) return inBody([not('faultKey', 'is of no fault of this site: send the fault first')]);
    const kept = await keepPicture(actor, {
      of: { thing: 'fault', id: fault.id },
      caption,
      bytes: Buffer.from(base64, 'base64'),
    });
    if (kept.outcome === 'refused') return inBody([not('base64', REASONS[kept.why])]);
    return { outcome: 'saved', id: kept.pictureId, isRepeat: kept.outcome === 'same' };
  },
};

const not = (path: string, says: string): Problem => ({ path, value: null, says });

const REASONS: Record<Extract<PictureOutcome, { outcome: 'refused' }>['why'], string> = {
  ...REFUSAL_WORDS,
  unknown: 'is of a fault that is not in use in the register of this site',
  caption: 'has a caption that is not one line of at most 200 characters',
  full: 'is one more than a fault keeps',
};
