import type { Tx } from '@/lib/db/client';
import { Prisma } from '@/lib/db/generated/client';

/** The site id of what concerns no one site, such as a sign-in of an unknown account. */
export const NO_SITE = '00000000-0000-0000-0000-000000000000';

export interface Entry {
  /** `thing.change`, in small letters: swap.record, motor.move, person.sign-in ... */
  action: string;
  thing: string;
  thingId: string | null;
  /** The changed fields only. Null before: it was made; null after: it is gone. */
  before?: Prisma.InputJsonObject | null;
  after?: Prisma.InputJsonObject | null;
  note?: string | null;
}

/** Whose change it is; null: the program itself, or nobody signed in. */
export interface By {
  siteId: string;
  userId: string | null;
  /** What was changed together and can be undone together (lib/register/commands/undo-change.ts). */
  changeId?: string;
}

/** Writes who changed what from what to what, in the transaction of the change itself. */
export async function record(tx: Tx, by: By, ...entries: Entry[]): Promise<void> {
  await tx.auditEntry.createMany({
    data: entries.map(({ action, thing, thingId, before = null, after = null, note = null }) => ({
      siteId: by.siteId,
      byId: by.userId,
      changeId: by.changeId ?? null,
      action,
      thing,
      thingId,
      before: before ?? Prisma.DbNull,
      after: after ?? Prisma.DbNull,
      note: note === null ? null : oneLine(note),
    })),
  });
}

/** A line break in a value must not look like a second entry. */
const oneLine = (text: string) => text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').slice(0, 500);
