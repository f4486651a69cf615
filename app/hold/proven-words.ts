import { thousands } from '@/app/thousands';
import type { LeastCover } from '@/lib/solver/least-cover';
import type { Aim } from '@/lib/spares/hold/hold-options';
import { figure } from '@/lib/units/figure';

/** What a choice is told by: what it was to be least in, within how long, and what it costs whatever is chosen. */
export interface ProvenOf {
  found: LeastCover;
  aim: Aim;
  seconds: number;
  fixedCents: number;
  currency: string;
}

/** What a cost of the programme is in words: motors, or money with what swaps cost whatever is chosen. */
export function costText({ aim, fixedCents, currency }: Omit<ProvenOf, 'found' | 'seconds'>, cost: number): string {
  if (aim === 'fewest') return cost === 1 ? '1 motor' : `${cost} motors`;
  return `${thousands((cost + fixedCents) / 100, 2)} ${currency}`;
}

/** What was proven of a choice and what not: where the time was over first, between which figures the least lies. */
export function provenWords(of: ProvenOf): string[] {
  const { found, aim, seconds, fixedCents } = of;
  const { cost, costBound, tie, tieBound, ended, says } = found;
  const gap = cost - costBound;
  const words: string[] = [];
  if (gap === 0) words.push(`Proven: no choice takes less than ${costText(of, cost)}.`);
  else {
    const began = ended === 'time' ? `The limit of ${seconds} s came before the proof.` : 'Not proven.';
    const part = figure((100 * gap) / (aim === 'fewest' ? cost : cost + fixedCents), 1);
    words.push(
      `${began} This choice takes ${costText(of, cost)}, and none takes less than ${costText(of, costBound)}: a gap of ${costText({ ...of, fixedCents: 0 }, gap)}, ${part} %. It covers every set that can be covered all the same.`,
    );
    if (ended === 'time') words.push('More time, or fewer sets, may close the gap.');
  }
  if (gap === 0 && tieBound < tie) {
    const began = ended === 'time' ? `Then the limit of ${seconds} s came: ` : '';
    words.push(
      aim === 'fewest'
        ? `${began}of choices of so many motors this one buys ${tie}; proven is only that none buys fewer than ${tieBound}.`
        : `${began}of choices at this cost this one holds ${tie} motors; proven is only that none holds fewer than ${tieBound}.`,
    );
  }
  if (ended === 'none' && says !== null)
    words.push(`The solver’s answer was not used, and the greedy choice stands: ${says}.`);
  return words;
}
