import type { Actor } from '@/lib/auth/may';
import { keepPicture } from '@/lib/register/commands/keep-picture';
import type { PictureOf } from '@/lib/register/picture-of';
import { MOST_PICTURE_MB } from './picture-limits';
import type { PictureWord } from './picture-words';

/** Keeps the picture that came with a form, and tells what came of it; null: none came. */
export async function pictureWith(
  actor: Actor,
  of: PictureOf,
  form: FormData,
  caption: string | null,
): Promise<PictureWord | null> {
  const [file, more] = form.getAll('picture').filter((one): one is File => typeof one !== 'string' && one.size > 0);
  if (file === undefined) return null;
  if (more !== undefined) return 'several';
  if (file.size > MOST_PICTURE_MB * 1024 * 1024) return 'large';
  const done = await keepPicture(actor, { of, caption, bytes: new Uint8Array(await file.arrayBuffer()) });
  if (done.outcome === 'refused') return done.why;
  return done.outcome === 'saved' ? 'kept' : 'same';
}
