import type { Problem } from '@/lib/plant/reading';

/** An answer that says what was wrong (RFC 9457), with every problem of what was sent: where, what stood there, what is right. */
export function problem(status: number, title: string, problems: readonly Problem[] = [], more: object = {}): Response {
  const body = { type: 'about:blank', status, title, ...(problems.length > 0 && { problems }), ...more };
  return Response.json(body, { status, headers: { 'content-type': 'application/problem+json', ...NEVER_KEPT } });
}

/** What was asked for, for the asker alone. */
export const answer = (value: object, status = 200, headers: Record<string, string> = {}): Response =>
  Response.json(value, { status, headers: { ...NEVER_KEPT, ...headers } });

export const NEVER_KEPT = { 'cache-control': 'private, no-store' };
