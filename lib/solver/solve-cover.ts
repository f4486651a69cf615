import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Programme } from '@/lib/spares/hold/programme';
import { type Line, lineOf } from './in-line';

/** What the thread is given: the programme column by column, and a choice to begin from. */
export interface SolverAsked {
  rowCount: number;
  costs: number[];
  ties: number[];
  /** Where the rows of each column begin; one more at the end. */
  starts: number[];
  rows: number[];
  from: number[];
  seconds: number;
}

interface Part {
  status: string;
  values: Float64Array | null;
  bound: number;
}

/** What a solver said of a programme. Nothing of it is true before it was verified. */
export interface Said {
  /** Columns; null: it found none in its time. */
  chosen: number[] | null;
  /** No choice costs less, as it says; null: it said nothing. */
  costBound: number | null;
  /** No choice of the chosen one's cost has less tie, as it says; null: it said nothing. */
  tieBound: number | null;
  seconds: number;
  /** In its own words, for the log. */
  status: string;
}

/** How long a thread that does not stop by itself is waited for, beyond its time. */
const GRACE_SECONDS = 10;

/** One core is left to whoever only looks something up; each thread may take two gigabytes besides. */
const MOST_AT_ONCE = Math.max(1, Math.min(4, availableParallelism() - 1));
/** Whoever comes behind so many would wait for minutes. */
const MOST_WAITING = 8;

const kept = globalThis as { bedplateSolvers?: Line };

/** One line a process, however often this module is loaded: so many threads solve at once. */
kept.bedplateSolvers ??= lineOf(MOST_AT_ONCE, MOST_WAITING);
export const solvers = kept.bedplateSolvers;

/**
 * The least-cost choice by integer programming, in a thread of its own with a new solver each time, so that everybody
 * else is answered meanwhile. `from` is a choice to begin with; a thread that is not done long after its time is ended.
 * Where others are being solved it waits for its turn, which counts for none of its seconds; where too many wait it is
 * not solved, and says so.
 */
export async function solveCover(programme: Programme, from: readonly number[], seconds: number): Promise<Said> {
  const said = await solvers.inLine(() => solvedInThread(programme, from, seconds));
  return said === null
    ? { ...NOTHING, seconds: 0, status: 'too many others were being solved, ask again in a minute' }
    : said;
}

async function solvedInThread(programme: Programme, from: readonly number[], seconds: number): Promise<Said> {
  const worker = new Worker(new URL('./solver-thread.mjs', import.meta.url), {
    workerData: askedOf(programme, from, seconds),
    resourceLimits: { maxOldGenerationSizeMb: 2_048 },
  });
  const began = performance.now();
  const passed = () => (performance.now() - began) / 1000;
  try {
    return await new Promise<Said>((resolve, reject) => {
      const late = setTimeout(
        () => resolve({ ...NOTHING, seconds: passed(), status: 'did not stop in its time' }),
        (seconds + GRACE_SECONDS) * 1000,
      );
      worker.once('message', (message: Answer) => {
        clearTimeout(late);
        resolve(saidOf(message));
      });
      worker.once('error', (error) => {
        clearTimeout(late);
        reject(error);
      });
      worker.once('exit', (code) => {
        clearTimeout(late);
        reject(new Error(`the solver ended without an answer (${code})`));
      });
    });
  } finally {
    await worker.terminate();
  }
}

const NOTHING = { chosen: null, costBound: null, tieBound: null };

interface Answer {
  first: Part;
  second: Part | null;
  seconds: number;
}

function askedOf({ rowCount, columns }: Programme, from: readonly number[], seconds: number): SolverAsked {
  const starts = [0];
  const rows: number[] = [];
  for (const column of columns) {
    for (const row of column.rows) rows.push(row);
    starts.push(rows.length);
  }
  const begun = new Array<number>(columns.length).fill(0);
  for (const column of from) begun[column] = 1;
  return {
    ...{ rowCount, costs: columns.map(({ cost }) => cost), ties: columns.map(({ tie }) => tie) },
    ...{ starts, rows, from: begun, seconds },
  };
}

function saidOf({ first, second, seconds }: Answer): Said {
  const values = second?.values ?? first.values;
  return {
    chosen: values === null ? null : chosenOf(values),
    costBound: wholeBound(first),
    tieBound: second === null ? null : wholeBound(second),
    seconds,
    status: second === null ? first.status : `${first.status}, then ${second.status}`,
  };
}

/** Values of a solver are whole up to a tolerance. */
const chosenOf = (values: Float64Array) => [...values.keys()].filter((column) => (values[column] as number) > 0.5);

/**
 * How far a bound may be off. It comes of reduced costs, which may be wrong by 1e-7 each whatever the costs are (the
 * solver's dual tolerance), and of sums of doubles. A share of 1e-6 would be a hundredth from a total of 10 000 on, and
 * nothing dearer could ever be called proven.
 */
const BOUND_OFF = { least: 1e-4, share: 1e-9 };

/** All costs are whole, so that no choice lies between a bound and the next whole number. */
function wholeBound({ bound, status }: Part): number | null {
  if (!Number.isFinite(bound) || (status !== 'optimal' && status !== 'time-limit')) return null;
  return Math.max(0, Math.ceil(bound - Math.max(BOUND_OFF.least, BOUND_OFF.share * Math.abs(bound))));
}
