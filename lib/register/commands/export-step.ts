import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** Notes in the audit that so many rows of something went out as a file. Whoever calls has asked `may`. */
export const recordExport = (actor: Actor, told: { kind: string; rows: number }) =>
  db.$transaction((tx) =>
    record(tx, actor, { action: 'register.export', thing: 'register', thingId: null, after: told }),
  );
