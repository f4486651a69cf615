import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

/** Takes a photograph out of the lists. It stays in the database: the record can be shown as it stood. */
export async function retirePicture(actor: Actor, pictureId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'picture.retire');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const where = { siteId, id: pictureId, retiredAt: null };
    const picture = isId(pictureId)
      ? await tx.attachment.findFirst({ where, select: { setId: true, motorId: true, caption: true } })
      : null;
    const { count } =
      picture === null ? { count: 0 } : await tx.attachment.updateMany({ where, data: { retiredAt: new Date() } });
    if (picture === null || count === 0) return refused('pictureId', 'is no photograph that is kept here');
    const { setId, motorId, caption } = picture;
    await record(tx, actor, {
      action: 'picture.retire',
      thing: setId === null ? 'motor' : 'set',
      thingId: setId ?? motorId,
      before: { pictureId, caption },
    });
    return { outcome: 'saved' };
  });
}
