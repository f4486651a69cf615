import type { AsyncLocalStorage } from 'node:async_hooks';

type Places = AsyncLocalStorage<{ status: number | null }>;

/**
 * Sets the status of the page being answered. Next gives a page no say but by leaving it blank without script; so our
 * server (scripts/web.mjs) keeps a place for it with each request.
 */
export function answerStatus(status: 403 | 404 | 500 | 503): void {
  const places = (globalThis as unknown as Record<symbol, Places | undefined>)[Symbol.for('bedplate.answer-status')];
  const place = places?.getStore();
  if (place) place.status = status;
}
