import { problem } from './problem';

const MOST_MB = 2;
const MOST_BYTES = MOST_MB * 1024 * 1024;
const JSON_TYPE = /^application\/json\s*(;|$)/i;

/** The text of a JSON body, read no further than the limit; or the answer that refuses it. */
export async function jsonSent(request: Request): Promise<string | Response> {
  const type = request.headers.get('content-type');
  if (type === null || !JSON_TYPE.test(type)) return problem(415, 'Send the body as application/json.');
  if (Number(request.headers.get('content-length')) > MOST_BYTES) return tooLarge();
  const parts: Uint8Array[] = [];
  let length = 0;
  if (request.body !== null)
    for await (const part of request.body as unknown as AsyncIterable<Uint8Array>) {
      length += part.length;
      if (length > MOST_BYTES) return tooLarge();
      parts.push(part);
    }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts));
  } catch {
    return problem(400, 'The body is not UTF-8 text.');
  }
}

const tooLarge = () => problem(413, `The body is larger than ${MOST_MB} MB.`);
