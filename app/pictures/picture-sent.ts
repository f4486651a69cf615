import { z } from 'zod';
import { bodyWithin } from '@/app/body-within';
import { returnPath } from '@/lib/auth/return-path';
import { type Problem, read } from '@/lib/plant/reading';
import type { PictureOf } from '@/lib/register/picture-of';

const MOST_MB = 15;
/** Two places to choose a file, four fields, and a few that a browser may add. */
const MOST_PARTS = 10;
const FORM = /^multipart\/form-data\s*;.*boundary=(?:"([^"]{1,70})"|([^;\s"]{1,70}))/i;

/** The form as it was sent; `files` are those in which something was chosen. */
export interface PictureSent {
  of: PictureOf;
  caption: string | null;
  /** The page to go back to. */
  to: string;
  files: Uint8Array[];
}

export interface Unread {
  status: 413 | 415 | 400 | 422;
  says: string;
  problems: Problem[];
}

const text = z.string().max(2_000).optional();
const fields = z
  .strictObject({ setId: text, motorId: text, caption: text, to: text })
  .refine(({ setId, motorId }) => (setId === undefined) !== (motorId === undefined), 'must name a set or a motor');

/** Reads a form with a picture, no further than its limits; or tells why it is not read. */
export async function pictureSent(request: Request): Promise<PictureSent | Unread> {
  const type = request.headers.get('content-type') ?? '';
  const boundary = FORM.exec(type);
  if (boundary === null) return unread(415, 'Send it as multipart/form-data.');
  const body = await bodyWithin(request, MOST_MB * 1024 * 1024);
  if (body === null) return unread(413, `The picture is larger than ${MOST_MB} MB.`);
  const mark = `--${boundary[1] ?? boundary[2] ?? ''}`;
  if (countOf(body, mark, MOST_PARTS + 2) > MOST_PARTS + 1) return unread(422, 'The form has too many fields.');
  const form = await new Response(new Uint8Array(body), { headers: { 'content-type': type } })
    .formData()
    .catch(() => null);
  if (form === null) return unread(400, 'The form did not arrive whole.');
  return readForm(form);
}

async function readForm(form: FormData): Promise<PictureSent | Unread> {
  // A place where no file was chosen arrives as an empty file without a name, which is read as an empty text.
  const pictures = form.getAll('picture').filter((one) => one !== '');
  const isText = pictures.some((one) => typeof one === 'string');
  if (isText) return misread({ path: 'picture', value: null, says: 'must be a file' });
  form.delete('picture');
  const twice = [...new Set(form.keys())].find((key) => form.getAll(key).length > 1);
  if (twice !== undefined) return misread({ path: twice, value: null, says: 'is there more than once' });
  const asked = read(fields, Object.fromEntries(form));
  if (!asked.ok) return misread(...asked.problems);
  const { setId, motorId, caption = '', to } = asked.value;
  const files = await Promise.all(pictures.map(async (one) => new Uint8Array(await (one as File).arrayBuffer())));
  return {
    of: setId === undefined ? { thing: 'motor', id: String(motorId) } : { thing: 'set', id: setId },
    caption: caption === '' ? null : caption,
    to: returnPath(to),
    files: files.filter(({ length }) => length > 0),
  };
}

const unread = (status: Unread['status'], says: string): Unread => ({ status, says, problems: [] });

const misread = (...problems: Problem[]): Unread => ({ status: 422, says: 'The form is not understood.', problems });

/** How often a mark stands in a body; no more than `most` are looked for. */
function countOf(body: Buffer, mark: string, most: number): number {
  let count = 0;
  for (let at = body.indexOf(mark); at !== -1 && count < most; at = body.indexOf(mark, at + mark.length)) count += 1;
  return count;
}
