import { greedy, harmonic } from '@/lib/spares/hold/greedy';
import type { Programme } from '@/lib/spares/hold/programme';
import { reduced } from '@/lib/spares/hold/reduced';
import { type Verified, verified } from '@/lib/spares/hold/verified';
import { type Said, solveCover } from './solve-cover';

/** Columns that cover every row, with what they cost by our own sum. */
export interface Cover {
  columns: number[];
  cost: number;
  tie: number;
}

export interface LeastCover extends Cover {
  /** No choice costs less. Equal to the cost: this one is proven least. */
  costBound: number;
  /** No choice of this cost has less tie; equal to the tie: proven. */
  tieBound: number;
  /** The greedy choice beside it, and how many times the best it can cost at most. */
  greedy: Cover & { mostTimes: number };
  /** How many rows and columns the rules of reduction left to be solved. */
  left: { rows: number; columns: number };
  seconds: number;
  /** done: proven; time: the limit came first; none: the solver's word was not used, and why is told. */
  ended: 'done' | 'time' | 'none';
  says: string | null;
}

/**
 * The choice of least cost, and of least tie among those, as far as it is found and proven within `seconds`. The solver
 * is not believed: what it chose is held against the whole programme, and where it does not cover, or costs more than the
 * greedy choice, that one stands. Every row must have a column.
 */
export async function leastCover(programme: Programme, seconds: number): Promise<LeastCover> {
  const byGreed = coverOf(programme, greedy(programme));
  const mostTimes = harmonic(programme);
  const { programme: rest, columnOf, forced } = reduced(programme);
  const left = { rows: rest.rowCount, columns: rest.columns.length };
  const beside = { greedy: { ...byGreed, mostTimes }, left };
  const whole = (columns: readonly number[]) => [...forced, ...columns.map((one) => columnOf[one] as number)];
  if (rest.rowCount === 0) {
    const only = coverOf(programme, whole([]));
    return { ...only, costBound: only.cost, tieBound: only.tie, ...beside, seconds: 0, ended: 'done', says: null };
  }
  const said = await solveCover(rest, greedy(rest), seconds);
  const solvers = said.chosen === null ? null : usable(programme, whole(said.chosen));
  const best = solvers !== null && !isLess(byGreed, solvers) ? solvers : byGreed;
  const bounds = boundsBy(said, verified(programme, forced), solvers);
  const greedyBound = Math.ceil(byGreed.cost / mostTimes - ROUNDING);
  // A bound above what a choice of ours costs is wrong, whoever proved it: then nothing of that solver counts.
  const isWrong = bounds.cost > best.cost || (best === solvers && bounds.tie > best.tie);
  const costBound = isWrong ? greedyBound : Math.max(bounds.cost, greedyBound);
  const tieBound = isWrong || best.cost !== solvers?.cost ? 0 : bounds.tie;
  const isDone = costBound === best.cost && tieBound === best.tie;
  return {
    ...{ ...best, costBound, tieBound, ...beside, seconds: said.seconds },
    ended: isDone ? 'done' : solvers !== null && !isWrong ? 'time' : 'none',
    says: isDone ? null : isWrong ? `${said.status}, with a bound above a choice that was found` : said.status,
  };
}

/** Of a quotient of whole numbers. */
const ROUNDING = 1e-9;

function coverOf(programme: Programme, columns: readonly number[]): Cover {
  const cover = usable(programme, columns);
  if (cover === null) throw new Error('rows stay uncovered');
  return cover;
}

/** The choice with its cost summed anew; null: it leaves rows uncovered. */
function usable(programme: Programme, columns: readonly number[]): Cover | null {
  const { cost, tie, uncovered } = verified(programme, columns);
  return uncovered.length > 0 ? null : { columns: [...columns].sort((a, b) => a - b), cost, tie };
}

const isLess = (a: Pick<Cover, 'cost' | 'tie'>, b: Pick<Cover, 'cost' | 'tie'>) =>
  a.cost < b.cost || (a.cost === b.cost && a.tie < b.tie);

/** What the solver says of the rest, with what is forced added: whatever it is silent about is bounded by that alone. */
function boundsBy(said: Said, forced: Verified, solvers: Cover | null): { cost: number; tie: number } {
  return {
    cost: said.costBound === null ? forced.cost : said.costBound + forced.cost,
    tie: said.tieBound === null || solvers === null ? forced.tie : said.tieBound + forced.tie,
  };
}
