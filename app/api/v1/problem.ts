import type { Problem } from '@/lib/plant/reading';

/** An answer that says what was wrong (RFC 9457), with every problem of what was sent: where, what stood there, what is right. */
export function problem(status: number, title: string, problems: readonly Problem[] = []): Response {
  const body = { type: 'about:blank', status, title, ...(problems.length > 0 && { problems }) };
  return Response.json(body, { status, headers: { 'content-type': 'application/problem+json', ...NEVER_KEPT } });
}

/** What was asked for, for the asker alone. */
export const answer = (value: object): Response => Response.json(value, { headers: NEVER_KEPT });

const NEVER_KEPT = { 'cache-control': 'private, no-store' };
