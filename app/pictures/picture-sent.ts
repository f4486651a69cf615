import { z } from 'zod';
import { formSent, misread, type Unread } from '@/app/form-sent';
import { returnPath } from '@/lib/auth/return-path';
import { read } from '@/lib/plant/reading';
import type { PictureOf } from '@/lib/register/picture-of';
import { MOST_PICTURE_MB } from './picture-limits';

/** Two places to choose a file, four fields, and a few that a browser may add. */
const LIMITS = { file: 'picture', mostMb: MOST_PICTURE_MB, mostParts: 10 };

/** The form as it was sent; `files` are those in which something was chosen. */
export interface PictureSent {
  of: PictureOf;
  caption: string | null;
  /** The page to go back to. */
  to: string;
  files: Uint8Array[];
}

const text = z.string().max(2_000).optional();
const fields = z
  .strictObject({ setId: text, motorId: text, faultId: text, caption: text, to: text })
  .refine(
    ({ setId, motorId, faultId }) => [setId, motorId, faultId].filter((one) => one !== undefined).length === 1,
    'must name a set, a motor or a fault',
  );

/** Reads a form with a picture, no further than its limits; or tells why it is not read. */
export async function pictureSent(request: Request): Promise<PictureSent | Unread> {
  const sent = await formSent(request, LIMITS);
  if ('status' in sent) return sent;
  const asked = read(fields, sent.fields);
  if (!asked.ok) return misread(...asked.problems);
  const { caption = '', to } = asked.value;
  const files = await Promise.all(sent.files.map(async (one) => new Uint8Array(await one.arrayBuffer())));
  return {
    of: ofWhat(asked.value),
    caption: caption === '' ? null : caption,
    to: returnPath(to),
    files: files.filter(({ length }) => length > 0),
  };
}

function ofWhat({ setId, motorId, faultId }: z.output<typeof fields>): PictureOf {
  if (setId !== undefined) return { thing: 'set', id: setId };
  return motorId === undefined ? { thing: 'fault', id: String(faultId) } : { thing: 'motor', id: motorId };
}
