import type { Action, Actor } from '@/lib/auth/may';
import type { OUTBOX_VERSION } from '@/lib/offline/outbox';
import type { Problem } from '@/lib/plant/reading';
import type { Taken } from '../commands/who-was-first';

/** A message as it came: its body is for its kind to read. Today's version or the one before. */
export interface Sent {
  version: 1 | typeof OUTBOX_VERSION;
  key: string;
  body: unknown;
}

export type Carried =
  | { outcome: 'saved'; id: string; isRepeat: boolean }
  | Taken
  | { outcome: 'refused'; problems: Problem[] };

/** What carries out one kind of message, once for each key. */
export interface Carrier {
  action: Action;
  /** The largest that a message of this kind is, MB. */
  mostMb: number;
  carryOut(actor: Actor, sent: Sent): Promise<Carried>;
}
