import type { Prisma } from '@/lib/db/generated/client';
import type { FoundColumns } from '@/lib/import/find-columns';
import type { DraftOptions } from '@/lib/import/row-draft';

/** In the order of an import's life; a person's word leads from ready to checking and from checked to applying. */
export const RUN_STATUSES = [
  'uploaded',
  'reading',
  'ready',
  'checking',
  'checked',
  'applying',
  'applied',
  'undoing',
  'undone',
  'cancelled',
  'failed',
] as const;
export type RunStatus = (typeof RUN_STATUSES)[number];

/** While a run has one of these, a job works on it. */
export const AT_WORK = ['reading', 'checking', 'applying', 'undoing'] as const satisfies readonly RunStatus[];
export const isAtWork = (status: string): status is (typeof AT_WORK)[number] =>
  (AT_WORK as readonly string[]).includes(status);

/** Which column means what, and what a person said for the whole file. */
export interface RunColumns extends FoundColumns {
  options: DraftOptions;
  /** Areas, stores and shelves that are named and not there are made. */
  makePlaces: boolean;
}

/** Rows read so far and what became of them. `passed`: headings, totals and empty rows among the same. */
export interface RunCounts {
  rows: number;
  /** Rows that the present step has dealt with. */
  done: number;
  new: number;
  changed: number;
  same: number;
  passed: number;
  refused: number;
  applied: number;
}

export const NO_COUNTS: RunCounts = {
  rows: 0,
  done: 0,
  new: 0,
  changed: 0,
  same: 0,
  passed: 0,
  refused: 0,
  applied: 0,
};

/** What is kept as JSON is ours: written by the same shapes. */
export const asJson = (value: object) => value as Prisma.InputJsonObject;
export const asList = (value: readonly unknown[]) => value as Prisma.InputJsonArray;
