// Solves one programme in a thread of its own and ends: lib/solver/solve-cover.ts starts it. Plain JavaScript, since Node
// runs it as it stands, in tests as in the built server.
import { parentPort, workerData } from 'node:worker_threads';
import loadHighs from 'highs';

/** @type {import('./solve-cover').SolverAsked} */
const asked = workerData;
const { rowCount, costs, ties, starts, rows, from, seconds } = asked;
const columnCount = costs.length;
const began = performance.now();
const highs = await loadHighs();

const first = solve(costs, from, null);
const cheapest = first.values;
const canTie = cheapest !== null && ties.some((tie) => tie > 0);
// Of equals in cost the least tie: no more may be spent than was.
const second = canTie ? solve(ties, cheapest, sum(costs, cheapest)) : null;
parentPort?.postMessage({ first, second, seconds: (performance.now() - began) / 1000 });

/** Minimises the objective over 0/1 columns that cover every row, within the time that is left. */
function solve(objective, startAt, mostCost) {
  const left = Math.max(0.1, seconds - (performance.now() - began) / 1000);
  return highs.withModel(modelOf(objective, mostCost), (model) => {
    const { numCols, numRows, matrix } = model.getLp();
    const sizes = [numCols, numRows, matrix.values.length];
    const wanted = [columnCount, rowCount + (mostCost === null ? 0 : 1), entriesOf(mostCost)];
    if (sizes.join() !== wanted.join()) throw new Error(`the model was taken as ${sizes}, not ${wanted}`);
    model.options.set({ output_flag: false, time_limit: left, mip_rel_gap: 0, mip_abs_gap: 0, random_seed: 1 });
    if (startAt !== null) model.setSolution({ colValue: startAt });
    model.run();
    const { optimal, timeLimit } = highs.constants.modelStatus;
    const status = model.getModelStatus();
    const { colValue } = model.getSolution();
    const hasValues = colValue.length === columnCount && model.info.get('primal_solution_status') === 2;
    return {
      status: status === optimal ? 'optimal' : status === timeLimit ? 'time-limit' : `status ${status}`,
      values: hasValues ? Float64Array.from(colValue) : null,
      bound: model.info.get('mip_dual_bound') * scaleOf(objective),
    };
  });
}

/** Column by column; with a limit on the cost one row more. Objectives are divided by what divides them all. */
function modelOf(objective, mostCost) {
  const hasLimit = mostCost !== null;
  const scale = scaleOf(objective);
  const [at, index, value] = [[0], [], []];
  for (let column = 0; column < columnCount; column += 1) {
    for (let i = starts[column]; i < starts[column + 1]; i += 1) {
      index.push(rows[i]);
      value.push(1);
    }
    if (hasLimit && costs[column] !== 0) {
      index.push(rowCount);
      value.push(costs[column] / scaleOf(costs));
    }
    at.push(index.length);
  }
  const numRows = rowCount + (hasLimit ? 1 : 0);
  const limit = hasLimit ? mostCost / scaleOf(costs) : null;
  return {
    numCols: columnCount,
    numRows,
    colCost: Array.from(objective, (one) => one / scale),
    colLower: new Float64Array(columnCount),
    colUpper: new Float64Array(columnCount).fill(1),
    rowLower: [...new Array(rowCount).fill(1), ...(hasLimit ? [-highs.infinity] : [])],
    rowUpper: [...new Array(rowCount).fill(highs.infinity), ...(hasLimit ? [limit] : [])],
    matrix: { format: 'csc', numRows, numCols: columnCount, starts: at, indices: index, values: value },
    integrality: new Array(columnCount).fill(highs.constants.variableType.integer),
  };
}

function entriesOf(mostCost) {
  return rows.length + (mostCost === null ? 0 : costs.filter((cost) => cost !== 0).length);
}

/** The greatest whole number that divides all of them; 1 where all are zero. */
function scaleOf(objective) {
  let common = 0;
  for (const one of objective) for (let rest = one; rest !== 0; ) [common, rest] = [rest, common % rest];
  return common === 0 ? 1 : common;
}

/** Values of a solver are whole up to a tolerance. */
function sum(objective, values) {
  return objective.reduce((total, one, i) => total + (values[i] > 0.5 ? one : 0), 0);
}
