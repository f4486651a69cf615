import type { Tx } from '@/lib/db/client';
import { NOWHERE } from '../invitation';

/** Up to where a phone knows the register. Every row that it may not have seen was changed in `from` or a later transaction. */
export interface Cursor {
  /** Which register: one that was restored from a backup counts its transactions anew. */
  register: string;
  /** The oldest transaction that was at work when it was read: what such a one wrote was not seen, whenever it commits. */
  from: bigint;
  /** How many people had been made nameless: a pack that still names one is fetched whole. */
  nameless: number;
}

export interface CursorNow extends Cursor {
  /** No transaction from here on has begun. A row with such a number came out of a backup, with the number it had. */
  before: bigint;
  at: Date;
}

/** Must be the first that is asked in its transaction (repeatable read): all that is read after it stands at this cursor. */
export async function cursorNow(tx: Tx, siteId: string): Promise<CursorNow> {
  const [row] = await tx.$queryRaw<{ register: string; from: bigint; before: bigint; at: Date }[]>`
    SELECT r.id::text AS register, pg_snapshot_xmin(s)::text::bigint AS from, pg_snapshot_xmax(s)::text::bigint AS before,
      statement_timestamp() AS at
    FROM register_identity AS r, pg_current_snapshot() AS s`;
  if (row === undefined) throw new Error('The register has no identity');
  return { ...row, nameless: await tx.user.count({ where: { siteId, email: { endsWith: NOWHERE } } }) };
}

export const cursorText = ({ register, from, nameless }: Cursor): string => `${register}.${from}.${nameless}`;

/** Null: it is none of ours. */
export function cursorOf(text: string): Cursor | null {
  const [, register, from, nameless] = /^([0-9a-f-]{36})\.(\d{1,18})\.(\d{1,9})$/.exec(text) ?? [];
  if (register === undefined || from === undefined) return null;
  return { register, from: BigInt(from), nameless: Number(nameless) };
}

/** Whether what has changed since can be told: it is of this register and of no time that this register has not seen. */
export const isBehind = (old: Cursor, now: Cursor): boolean =>
  old.register === now.register && old.from <= now.from && old.nameless === now.nameless;
