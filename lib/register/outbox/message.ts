import { z } from 'zod';
import { OUTBOX_VERSION } from '@/lib/offline/outbox';
import { OUTBOX_KINDS } from './carriers';

/** A message as a phone sends it, its body still unread. A phone with yesterday's program sends the version before (R12). */
export const outboxMessage = z.strictObject({
  version: z.literal([1, OUTBOX_VERSION]),
  kind: z.enum(OUTBOX_KINDS),
  key: z.uuid(),
  userId: z.string().max(100),
  siteId: z.uuid(),
  body: z.record(z.string(), z.unknown()),
});
