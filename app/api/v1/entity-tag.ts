import { problem } from './problem';

/** A version of a record as a strong entity tag (RFC 9110, 8.8.3). */
export const tagOf = (version: number): string => `"${version}"`;

/** The version that the asker read, as If-Match says; or the answer that asks for it. */
export function versionRead(request: Request): number | Response {
  const told = request.headers.get('if-match');
  if (told === null) return problem(428, 'Say by If-Match what you read: its ETag.');
  const version = /^"(\d{1,9})"$/.exec(told.trim())?.[1];
  if (version === undefined)
    return problem(428, 'If-Match must be the one ETag that was read with the record, such as "3".');
  return Number(version);
}

/** Whether the asker has this version already (RFC 9110, 13.1.2). */
export const hasAlready = (request: Request, version: number): boolean =>
  (request.headers.get('if-none-match') ?? '')
    .split(',')
    .some((tag) => tag.trim().replace(/^W\//, '') === tagOf(version));
