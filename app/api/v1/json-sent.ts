import { bodyWithin } from '@/app/body-within';
import { problem } from './problem';

const MOST_MB = 2;
const JSON_TYPE = /^application\/json\s*(;|$)/i;

/** The text of a JSON body, read no further than the limit; or the answer that refuses it. */
export async function jsonSent(request: Request): Promise<string | Response> {
  const type = request.headers.get('content-type');
  if (type === null || !JSON_TYPE.test(type)) return problem(415, 'Send the body as application/json.');
  const body = await bodyWithin(request, MOST_MB * 1024 * 1024);
  if (body === null) return problem(413, `The body is larger than ${MOST_MB} MB.`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(body);
  } catch {
    return problem(400, 'The body is not UTF-8 text.');
  }
}
