import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type PictureOf, pictureOf } from '../picture-of';

/** As many as are kept of one thing; before another one, one is retired. */
export const MOST_PICTURES = 60;

export interface PictureLine {
  pictureId: string;
  at: Date;
  by: string;
  caption: string | null;
}

/** The photographs kept of a set, a motor or a fault, newest first, without the pictures themselves. */
export async function picturesOf(actor: Actor, of: PictureOf): Promise<PictureLine[]> {
  must(actor, 'register.read');
  if (!isId(of.id)) return [];
  const rows = await db.attachment.findMany({
    where: { siteId: actor.siteId, ...pictureOf(of), retiredAt: null },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: { id: true, at: true, caption: true, by: { select: { name: true } } },
    take: MOST_PICTURES,
  });
  return rows.map(({ id, at, caption, by }) => ({ pictureId: id, at, by: by.name, caption }));
}
