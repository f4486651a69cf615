import { VERDICTS } from '@/lib/matching/verdict';
import type { Choice } from './choice';
import type { Aim } from './hold-options';
import type { Served } from './served';

/** One motor of a choice, and the sets it is held for. */
export interface Held {
  candidate: number;
  sets: { set: number; as: Served }[];
}

/**
 * The motors of a choice, each with the sets that it serves best of them all: by verdict, then by hours; where work is paid
 * for by hours first, for the quickest is the one that was reckoned with. Every set that could be served must be served by
 * one of them: otherwise it throws, for then the choice is of another case.
 */
export function heldOf({ counted, meanings }: Choice, columns: readonly number[], aim: Aim): Held[] {
  const better = aim === 'cheapest-with-work' ? quicker : safer;
  const held = new Map<number, Held>();
  for (const column of columns) {
    const meaning = meanings[column];
    if (meaning?.kind === 'motor') held.set(meaning.candidate, { candidate: meaning.candidate, sets: [] });
  }
  counted.forEach((pairs, set) => {
    const [as] = pairs.filter(({ candidate }) => held.has(candidate)).sort(better);
    if (as !== undefined) held.get(as.candidate)?.sets.push({ set, as });
    else if (pairs.length > 0) throw new Error(`set ${set} is not covered by the choice`);
  });
  return [...held.values()].sort((a, b) => b.sets.length - a.sets.length || a.candidate - b.candidate);
}

const byVerdict = (a: Served, b: Served) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict);
const byHours = (a: Served, b: Served) => a.hours - b.hours;
const safer = (a: Served, b: Served) => byVerdict(a, b) || byHours(a, b) || a.candidate - b.candidate;
const quicker = (a: Served, b: Served) => byHours(a, b) || byVerdict(a, b) || a.candidate - b.candidate;
