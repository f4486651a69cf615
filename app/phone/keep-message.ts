import { OUTBOX_VERSION, type OutboxBodies, type OutboxKind, type OutboxMessage } from '@/lib/offline/outbox';
import { ask } from './ask';
import type { Asks, Status } from './asked';
import { newKey } from './new-key';

/** Keeps a message of this person until the register has it. `says`: what it tells, in words. */
export function keepMessage<K extends OutboxKind>(
  { userId, siteId }: Pick<NonNullable<Status['about']>, 'userId' | 'siteId'>,
  {
    kind,
    tag,
    says,
    body,
    key = newKey(),
  }: { kind: K; tag: string; says: string; body: OutboxBodies[K]; key?: string },
): Promise<Asks['keep']['out']> {
  const message: OutboxMessage<K> = { version: OUTBOX_VERSION, kind, key, userId, siteId, body };
  return ask('keep', { waiting: { key, tag, says, message } });
}
