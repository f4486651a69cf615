import { createHash } from 'node:crypto';
import { answer, NEVER_KEPT, problem } from './problem';

/**
 * An answer's strong entity tag (RFC 9110, 8.8.3): the record's version, and a sum of the answer, since beside the record
 * it tells what other records decide, such as which motor is in a set.
 */
export const tagOf = (answer: { version: number }): string =>
  `"${answer.version}-${createHash('sha256').update(JSON.stringify(answer)).digest('hex').slice(0, 12)}"`;

/** The tag of what the asker read, as If-Match says; or the answer that asks for it. */
export function tagRead(request: Request): string | Response {
  const told = request.headers.get('if-match')?.trim();
  if (told === undefined) return problem(428, 'Say by If-Match what you read: its ETag.');
  if (!/^"[\x21\x23-\x7e]*"$/.test(told)) return problem(428, 'If-Match must be the one ETag that was read.');
  return told;
}

/** Whether the asker has this answer already (RFC 9110, 13.1.2). */
const hasAlready = (request: Request, tag: string): boolean =>
  (request.headers.get('if-none-match') ?? '').split(',').some((one) => one.trim().replace(/^W\//, '') === tag);

/** A record's answer, or 304 to who has it. */
export function tagged(request: Request, body: { version: number }): Response {
  const etag = tagOf(body);
  return hasAlready(request, etag)
    ? new Response(null, { status: 304, headers: { etag, ...NEVER_KEPT } })
    : answer(body, 200, { etag });
}
