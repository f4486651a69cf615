import type { Problem } from '@/lib/plant/reading';
import { bodyWithin } from './body-within';

const FORM = /^multipart\/form-data\s*;.*boundary=(?:"([^"]{1,70})"|([^;\s"]{1,70}))/i;

/** A form with a file, as it was sent. */
export interface FormSent {
  fields: Record<string, string>;
  /** Those in which something was chosen. */
  files: File[];
}

export interface Unread {
  status: 413 | 415 | 400 | 422;
  says: string;
  problems: Problem[];
}

/** Reads a form whose files come under `file`, no further than its limits; or tells why it is not read. */
export async function formSent(
  request: Request,
  { file, mostMb, mostParts }: { file: string; mostMb: number; mostParts: number },
): Promise<FormSent | Unread> {
  const type = request.headers.get('content-type') ?? '';
  const boundary = FORM.exec(type);
  if (boundary === null) return unread(415, 'Send it as multipart/form-data.');
  const body = await bodyWithin(request, mostMb * 1024 * 1024);
  if (body === null) return unread(413, `The ${file} is larger than ${mostMb} MB.`);
  const mark = `--${boundary[1] ?? boundary[2] ?? ''}`;
  if (countOf(body, mark, mostParts + 2) > mostParts + 1) return unread(422, 'The form has too many fields.');
  const form = await new Response(new Uint8Array(body), { headers: { 'content-type': type } })
    .formData()
    .catch(() => null);
  if (form === null) return unread(400, 'The form did not arrive whole.');
  // A place where no file was chosen arrives as an empty file without a name, which is read as an empty text.
  const files = form.getAll(file).filter((one) => one !== '');
  if (files.some((one) => typeof one === 'string')) return misread({ path: file, value: null, says: 'must be a file' });
  form.delete(file);
  const twice = [...new Set(form.keys())].find((key) => form.getAll(key).length > 1);
  if (twice !== undefined) return misread({ path: twice, value: null, says: 'is there more than once' });
  return { fields: Object.fromEntries(form) as Record<string, string>, files: files as File[] };
}

const unread = (status: Unread['status'], says: string): Unread => ({ status, says, problems: [] });

export const misread = (...problems: Problem[]): Unread => ({
  status: 422,
  says: 'The form is not understood.',
  problems,
});

/** How often a mark stands in a body; no more than `most` are looked for. */
function countOf(body: Buffer, mark: string, most: number): number {
  let count = 0;
  for (let at = body.indexOf(mark); at !== -1 && count < most; at = body.indexOf(mark, at + mark.length)) count += 1;
  return count;
}
