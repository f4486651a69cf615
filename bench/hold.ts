// npm run bench:hold: the choice of what to hold of the shelf motors and the standard ratings, over plants of n, 2n and 4n sets and shelf motors.
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { leastCover } from '@/lib/solver/least-cover';
import { buyCandidates } from '@/lib/spares/hold/buy-candidates';
import { choiceOf, type HoldCase } from '@/lib/spares/hold/choice';
import type { ChoiceOptions } from '@/lib/spares/hold/hold-options';
import { servingOf } from '@/lib/spares/hold/served';
import { shelfCandidates } from '@/lib/spares/hold/shelf-candidates';
import { plant } from './plant';

const LIMIT_SECONDS = Number(process.argv[2] ?? 60);
const asOf = '2026-11-28';

const plain: ChoiceOptions = {
  ...{
    aim: 'fewest',
    from: 'both',
    without: [],
    fit: 'straight-swap',
    mostHours: 4,
    checks: 'none',
    mostLeadDays: null,
  },
  ...{ perHour: 80, years: 10 },
};
const ASKED: [string, ChoiceOptions][] = [
  ['fewest, straight swaps', plain],
  ['fewest, work up to 4 h', { ...plain, fit: 'swap-with-work' }],
  ['fewest, work, readings counted', { ...plain, fit: 'swap-with-work', checks: 'readings' }],
  ['fewest, work, every check counted', { ...plain, fit: 'swap-with-work', checks: 'all' }],
  ['cheapest, work up to 4 h', { ...plain, aim: 'cheapest', fit: 'swap-with-work' }],
  ['cheapest to buy alone, work up to 4 h', { ...plain, aim: 'cheapest', from: 'buy', fit: 'swap-with-work' }],
  ['cheapest with work, up to 8 h', { ...plain, aim: 'cheapest-with-work', fit: 'swap-with-work', mostHours: 8 }],
];

for (const n of [1, 2, 4]) {
  const { sets, motors } = plant({ sets: 1_250 * n, spares: 750 * n });
  const theCase = caseOf(sets, motors);
  let allMs = 0;
  for (const [name, options] of ASKED) allMs += await chosen(name, theCase, options);
  console.log(`  all of them: ${(allMs / 1000).toFixed(1)} s`);
}

/** Every pair judged, and every motor with its price. */
function caseOf(sets: readonly PumpSet[], motors: readonly Motor[]): HoldCase {
  const [shelf, shelfMs] = timed(() => shelfCandidates(motors, asOf));
  const [bought, boughtMs] = timed(() => buyCandidates(sets));
  const candidates = [...shelf, ...bought];
  console.log(
    `\n${sets.length} sets × ${motors.length} shelf motors: ${shelf.length} kinds (${shelfMs} ms); ${bought.length} kinds to buy (${boughtMs} ms)`,
  );
  const [served, servedMs] = timed(() => {
    const serving = servingOf(candidates, { settings: defaultSettings, asOf });
    return sets.map(serving);
  });
  console.log(
    `  ${served.reduce((sum, { length }) => sum + length, 0)} pairs that could go in, judged in ${servedMs} ms`,
  );
  // Prices are invented: 300 for one and 100 for each kW, in steps of 10; every seventh is not told.
  const offered = candidates.map(({ motor, from }, i) => ({
    price:
      from === 'shelf' || i % 7 === 0
        ? null
        : ({ amount: 300 + 10 * Math.round(10 * (motor.ratings[0]?.kw as number)), by: 'rule' } as const),
    leadDays: 14,
  }));
  return { candidates, offered, served };
}

/** One choice, told in a line; how long it took in all, ms. */
async function chosen(name: string, theCase: HoldCase, options: ChoiceOptions): Promise<number> {
  const [{ programme, unservable }, choiceMs] = timed(() => choiceOf(theCase, options, 0.1));
  const began = performance.now();
  const found = await leastCover(programme, LIMIT_SECONDS);
  const ms = Math.round(performance.now() - began);
  const { cost, tie, costBound, tieBound, greedy, left, ended, seconds } = found;
  console.log(
    `  ${name}: ${theCase.served.length - unservable.length} sets, ${programme.rowCount} rows × ${programme.columns.length} columns (${choiceMs} ms),` +
      ` left ${left.rows} × ${left.columns}; cost ${cost} (bound ${costBound}), tie ${tie} (bound ${tieBound}),` +
      ` greedy ${greedy.cost}; ${ended}, solver ${seconds.toFixed(1)} s, all ${(ms / 1000).toFixed(1)} s`,
  );
  return choiceMs + ms;
}

function timed<T>(work: () => T): [T, number] {
  const began = performance.now();
  const value = work();
  return [value, Math.round(performance.now() - began)];
}
