import type { Tx } from '@/lib/db/client';
import type { State } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';

export const THINGS = ['area', 'store', 'shelf', 'set', 'motor'] as const;
export type ThingName = (typeof THINGS)[number];

/** A record and the version under which it was read. */
export interface Stands {
  state: State;
  version: number;
}

/** How one kind of record is read and written whole. */
export interface Thing {
  /** Those of the site among `ids`, as they stand. */
  standing(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, Stands>>;
  /** The same, locked in the order of their ids until the transaction ends. */
  locked(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, Stands>>;
  /** What is wrong with the record as it would stand: its fields one by one, then against the rest of the register. */
  problems(tx: Tx, siteId: string, id: string, state: State): Promise<Problem[]>;
  /** Writes the record so; the problems were asked before. */
  write(tx: Tx, siteId: string, id: string, state: State): Promise<void>;
}
