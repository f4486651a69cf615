import type { HoldCandidate, Offered } from './candidate';
import type { ChoiceOptions } from './hold-options';
import type { Column, Programme } from './programme';
import { notCounted, type Refusal, refusalOf } from './refusal';
import type { Served } from './served';

/** What is chosen from, and for what: for each set the candidates that could go in, by the whole judgement. */
export interface HoldCase {
  candidates: readonly HoldCandidate[];
  /** For each candidate what the site has told of buying it. */
  offered: readonly Offered[];
  /** For each set. */
  served: readonly (readonly Served[])[];
}

/** What a column of the programme stands for: a motor to hold, or the longer work at some sets that it saves to pay for. */
export type Meaning = { kind: 'motor'; candidate: number } | { kind: 'work'; sets: readonly number[] };

export interface Choice {
  programme: Programme;
  /** For each column. */
  meanings: Meaning[];
  /** For each set what counts as its cover. */
  counted: (readonly Served[])[];
  /** Sets that nothing could serve, each with how many candidates are not counted for which reason. */
  unservable: { set: number; because: Partial<Record<Refusal, number>> }[];
  /** Hundredths of the currency that swaps cost whatever is chosen; 0 unless work is counted. */
  fixedCents: number;
}

/** Money is counted in hundredths, so that sums are whole and exact. */
export const centsOf = (money: number): number => Math.round(money * 100);

/**
 * The choice as a programme. Fewest: each motor counts one, and of equals the one with the fewest still to be bought.
 * Cheapest: what is on the shelf costs nothing more, a bought one its price, and of equals the fewest motors. With work:
 * besides, each set pays for the hours that its quickest chosen motor takes, `swapsPerYear` times a year over the years
 * asked; it is a row for every length of work shorter than the longest, covered by the motors no slower, or paid for.
 */
export function choiceOf(
  { candidates, offered, served }: HoldCase,
  options: ChoiceOptions,
  swapsPerYear: number,
): Choice {
  const refused = candidates.map((candidate, i) => refusalOf(candidate, offered[i] as Offered, options));
  const unservable: Choice['unservable'] = [];
  const counted = served.map((pairs, set) => {
    const because: Partial<Record<Refusal, number>> = {};
    const counts = pairs.filter((pair) => {
      const why = refused[pair.candidate] ?? notCounted(pair, options);
      if (why !== null) because[why] = (because[why] ?? 0) + 1;
      return why === null;
    });
    if (counts.length === 0) unservable.push({ set, because });
    return counts;
  });
  const money = options.aim === 'cheapest-with-work' ? hourCents(options, swapsPerYear) : null;
  const rows = rowsOf(counted, money);
  return {
    ...programmeOf(rows, { candidates, offered }, options),
    counted,
    unservable,
    fixedCents: fixed(counted, money),
  };
}

/** Hundredths that an hour of work at one set comes to over the years. */
function hourCents({ perHour, years }: ChoiceOptions, swapsPerYear: number): number {
  if (perHour === null) throw new Error('work is counted by what an hour costs, and that is not told');
  return perHour * 100 * swapsPerYear * years;
}

/** Something to be covered by one of these candidates, or else paid for; null: it must be covered. */
interface Row {
  candidates: number[];
  cents: number | null;
  sets: number[];
}

/** Rows covered by the same candidates are one; what is paid for them adds up. */
function rowsOf(counted: readonly (readonly Served[])[], money: number | null): Row[] {
  const rows = new Map<string, Row>();
  const add = (candidates: number[], cents: number | null, set: number) => {
    const key = `${cents === null ? 'must' : 'may'} ${candidates.join(' ')}`;
    const row = rows.get(key);
    if (row === undefined) {
      rows.set(key, { candidates, cents, sets: [set] });
      return;
    }
    row.sets.push(set);
    if (row.cents !== null && cents !== null) row.cents += cents;
  };
  counted.forEach((pairs, set) => {
    if (pairs.length === 0) return;
    add(rising(pairs), null, set);
    if (money === null) return;
    const lengths = [...new Set(pairs.map(({ hours }) => hours))].sort((a, b) => a - b);
    lengths.slice(0, -1).forEach((hours, i) => {
      const longer = lengths[i + 1] as number;
      add(rising(pairs.filter((pair) => pair.hours <= hours)), (longer - hours) * money, set);
    });
  });
  return [...rows.values()];
}

const rising = (pairs: readonly Served[]) => pairs.map(({ candidate }) => candidate).sort((a, b) => a - b);

/** The least hours of every set, which no choice can save. */
function fixed(counted: readonly (readonly Served[])[], money: number | null): number {
  if (money === null) return 0;
  let hours = 0;
  for (const pairs of counted) if (pairs.length > 0) hours += Math.min(...pairs.map((pair) => pair.hours));
  return Math.round(hours * money);
}

function programmeOf(
  rows: readonly Row[],
  { candidates, offered }: Pick<HoldCase, 'candidates' | 'offered'>,
  { aim }: ChoiceOptions,
): Pick<Choice, 'programme' | 'meanings'> {
  const covers = new Map<number, number[]>();
  rows.forEach((row, index) => {
    for (const candidate of row.candidates) {
      const list = covers.get(candidate);
      if (list === undefined) covers.set(candidate, [index]);
      else list.push(index);
    }
  });
  const columns: Column[] = [];
  const meanings: Meaning[] = [];
  for (const [candidate, of] of [...covers].sort(([a], [b]) => a - b)) {
    const isBought = candidates[candidate]?.from === 'buy';
    const cost = aim === 'fewest' ? 1 : isBought ? priceCents(offered[candidate] as Offered) : 0;
    columns.push({ cost, tie: aim === 'fewest' ? (isBought ? 1 : 0) : 1, rows: of });
    meanings.push({ kind: 'motor', candidate });
  }
  rows.forEach(({ cents, sets }, index) => {
    if (cents === null) return;
    columns.push({ cost: Math.round(cents), tie: 0, rows: [index] });
    meanings.push({ kind: 'work', sets });
  });
  return { programme: { rowCount: rows.length, columns }, meanings };
}

function priceCents({ price }: Offered): number {
  if (price === null) throw new Error('a candidate without a price was not left out');
  return centsOf(price.amount);
}
