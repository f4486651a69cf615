import type { OutboxAnswer } from '@/lib/offline/outbox';

type Taken = Extract<OutboxAnswer, { outcome: 'taken' }>;

/** Who was first, when, and how it stands now. */
export function takenText({ what, by, at, setTag, motorNumber }: Taken): string {
  const who = by ?? 'Somebody';
  const when = at === null ? '' : ` at ${at.slice(0, 16).replace('T', ' ')} UTC`;
  if (what === 'motor')
    return `${who} took the motor ${motorNumber ?? ''} first${when}: by the register it is ${setTag === null ? 'in no set' : `in ${setTag}`} now.`;
  return `${who} changed what is in ${setTag ?? 'the set'} first${when}: by the register it holds ${motorNumber ?? 'no motor'} now.`;
}
