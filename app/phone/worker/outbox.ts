import type { OutboxAnswer } from '@/lib/offline/outbox';
import type { Waiting } from '../asked';
import { takenText } from '../taken-text';
import { alone } from './alone';
import { held, load, overlay } from './held';
import { state } from './standing';
import { isFull, store } from './store';
import { tellOthers } from './tell-others';

/** Keeps what was recorded until it has gone up. Refused when the phone has no room: nothing is half kept. */
export async function keep(one: Omit<Waiting, 'state' | 'told' | 'at'>) {
  // In the order in which they were made, were it within one millisecond or by a clock set back.
  const at = Math.max(Date.now(), ...held.waiting.map((before) => before.at + 1));
  const waiting: Waiting = { ...one, at, state: 'waiting', told: null };
  try {
    const db = await store();
    await db.put('outbox', waiting);
  } catch (error) {
    return {
      outcome: 'refused' as const,
      says: isFull(error)
        ? 'This phone has no room left, so nothing was recorded. Make room, or write it down; what you typed is still here.'
        : 'This phone could not keep it, so nothing was recorded. What you typed is still here.',
    };
  }
  held.waiting = [...held.waiting.filter(({ key }) => key !== waiting.key), waiting];
  overlay();
  tellOthers();
  return { outcome: 'kept' as const };
}

export async function change(key: string, to: Partial<Waiting> | null): Promise<void> {
  const db = await store();
  const before = await db.get('outbox', key);
  if (before !== undefined && to !== null) await db.put('outbox', { ...before, ...to });
  if (to === null) await db.delete('outbox', key);
  held.waiting = held.waiting.flatMap((one) => (one.key !== key ? [one] : to === null ? [] : [{ ...one, ...to }]));
  overlay();
  tellOthers();
}

/** Sends what waits, oldest first, one tab at a time. Answers whether anything went up. */
export async function send(): Promise<boolean> {
  let hasSent = false;
  await alone('bedplate-outbox', async () => {
    await load(); // what another tab sent is gone
    for (const one of held.waiting) {
      if (one.state !== 'waiting' || one.message.userId !== held.about?.userId) continue;
      const came = await sent(one);
      if (came === 'later') return;
      hasSent = true;
    }
  });
  return hasSent;
}

async function sent(one: Waiting): Promise<'settled' | 'later'> {
  const response = await fetch('/pump/outbox', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(one.message),
    signal: AbortSignal.timeout(30_000),
  }).catch(() => null);
  if (response === null) return 'later';
  if (response.status === 401) state.isSignedOut = true;
  switch (response.status) {
    case 200:
    case 201:
      await change(one.key, null);
      return 'settled';
    case 409:
      await change(one.key, { state: 'taken', told: await toldIn(response) });
      return 'settled';
    case 400:
    case 403:
    case 413:
    case 415:
    case 422:
      await change(one.key, { state: 'refused', told: await toldIn(response) });
      return 'settled';
    default:
      return 'later';
  }
}

/** What the register said of it, in a sentence. */
async function toldIn(response: Response): Promise<string> {
  const told = (await response.json().catch(() => null)) as (Partial<OutboxAnswer> & { title?: string }) | null;
  switch (told?.outcome) {
    case 'taken':
      return takenText(told as Extract<OutboxAnswer, { outcome: 'taken' }>);
    case 'refused':
      return (told as Extract<OutboxAnswer, { outcome: 'refused' }>).problems
        .map(({ path, says }) => `${path.replace(/^body\./, '')} ${says}`)
        .join('; ');
    case 'not-theirs':
      return 'It was written by somebody else, or for another site.';
    default:
      return told?.title ?? `The register refused it (${response.status}).`;
  }
}
