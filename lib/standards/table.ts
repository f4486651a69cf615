import type { Status } from './dimension';

/** One printed figure: the value, how many texts it was read in (2 stands for two or more, 0 is memory), and which. */
export type Cell<T = number> = readonly [printed: T, texts: 0 | 1 | 2, src: string];

/** A printed pair of limits. */
export type Limits = readonly [max: number, min: number];

/** A table of a standard, as printed. `texts` says what each source code in a cell stands for. */
export interface Table<Row> {
  source: { standard: string; edition: string; clause: string; texts: Readonly<Record<string, string>> };
  unit: string;
  columns: Readonly<Record<string, string>>;
  rows: readonly Row[];
  notes: readonly string[];
}

const STATUSES = ['memory', 'published', 'published-2'] as const;

export const statusOf = (texts: 0 | 1 | 2): Status => STATUSES[texts];

/** The weaker of two: a value worked out from both is known no better than this. */
export const weaker = (a: 0 | 1 | 2, b: 0 | 1 | 2): 0 | 1 | 2 => (a < b ? a : b);

const READ_IN = ['(from memory)', '(read in one text)', '(read in two texts)'] as const;

/** The clause and how well it was read, as a finding shows it. */
export const citeOf = (clause: string, texts: 0 | 1 | 2): string => `${clause} ${READ_IN[texts]}`;
