import { createHash } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { reencoded } from '@/lib/picture/reencoded';
import type { Refusal } from '@/lib/picture/refusal';
import { isId } from '../is-id';
import { type PictureOf, pictureOf } from '../picture-of';
import { MOST_PICTURES } from '../queries/pictures-of';

/** A caption is a line, not a report. */
export const LONGEST_CAPTION = 200;

export interface NewPicture {
  of: PictureOf;
  caption: string | null;
  /** As it was sent; what is kept is made anew from it. */
  bytes: Uint8Array;
}

export type PictureOutcome =
  | { outcome: 'saved'; pictureId: string }
  /** It is kept there already. */
  | { outcome: 'same'; pictureId: string }
  | { outcome: 'refused'; why: Refusal | 'unknown' | 'caption' | 'full' };

/** Keeps a photograph of a set, a motor or a fault, without what a camera writes beside the picture. */
export async function keepPicture(actor: Actor, { of, caption, bytes }: NewPicture): Promise<PictureOutcome> {
  must(actor, 'picture.keep');
  const words = caption === null || caption.trim() === '' ? null : caption.trim();
  if (words !== null && (words.length > LONGEST_CAPTION || /\p{Cc}/u.test(words)))
    return { outcome: 'refused', why: 'caption' };
  if (!isId(of.id)) return { outcome: 'refused', why: 'unknown' };
  const made = await reencoded(bytes);
  if (!made.ok) return { outcome: 'refused', why: made.why };
  const sha256 = createHash('sha256').update(made.content).digest('hex');
  const { siteId, userId: byId } = actor;
  return db.$transaction(async (tx): Promise<PictureOutcome> => {
    const about = await locked(tx, siteId, of);
    if (about === null) return { outcome: 'refused', why: 'unknown' };
    const where = { siteId, ...pictureOf(of), retiredAt: null };
    const same = await tx.attachment.findFirst({ where: { ...where, sha256 }, select: { id: true } });
    if (same) return { outcome: 'same', pictureId: same.id };
    if ((await tx.attachment.count({ where })) >= MOST_PICTURES) return { outcome: 'refused', why: 'full' };
    const { id } = await tx.attachment.create({
      data: {
        siteId,
        ...pictureOf(of),
        ...pictureOf(about),
        byId,
        caption: words,
        mediaType: made.mediaType,
        sha256,
        content: made.content,
      },
      select: { id: true },
    });
    await record(tx, actor, {
      action: 'picture.keep',
      thing: about.thing,
      thingId: about.id,
      after: { pictureId: id, caption: words, sha256, bytes: made.content.length },
    });
    return { outcome: 'saved', pictureId: id };
  });
}

/**
 * Locks what the picture is of, so that two who send the same picture at once do not both find it missing: the set or the
 * motor, of a fault its set. Null: there is none in use.
 */
async function locked(tx: Tx, siteId: string, { thing, id }: PictureOf): Promise<PictureOf | null> {
  if (thing === 'fault') {
    const fault = await tx.fault.findUnique({ where: { siteId_id: { siteId, id } }, select: { setId: true } });
    return fault && locked(tx, siteId, { thing: 'set', id: fault.setId });
  }
  const rows =
    thing === 'set'
      ? await tx.$queryRaw<unknown[]>`
          SELECT 1 FROM pump_set WHERE site_id = ${siteId}::uuid AND id = ${id}::uuid AND retired_at IS NULL
          FOR NO KEY UPDATE`
      : await tx.$queryRaw<unknown[]>`
          SELECT 1 FROM motor WHERE site_id = ${siteId}::uuid AND id = ${id}::uuid AND retired_at IS NULL
          FOR NO KEY UPDATE`;
  return rows.length === 1 ? { thing, id } : null;
}
