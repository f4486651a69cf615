import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';

export interface KnownPicture {
  mediaType: string;
  content: Uint8Array<ArrayBuffer>;
}

/** One photograph with its bytes; null when the actor's site keeps none with this id. */
export async function pictureById(actor: Actor, pictureId: string): Promise<KnownPicture | null> {
  must(actor, 'register.read');
  if (!isId(pictureId)) return null;
  return db.attachment.findFirst({
    where: { siteId: actor.siteId, id: pictureId, retiredAt: null },
    select: { mediaType: true, content: true },
  });
}
