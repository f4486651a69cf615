import type { HoldAsked } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import { figure } from '@/lib/units/figure';
import { costText, provenWords } from './proven-words';

/** What was proven of a choice, and the greedy choice beside it. */
export function Proven({
  answer: { greedy, fixedCents },
  asked: { options, seconds },
  found,
  currency,
}: {
  answer: HoldAnswer;
  asked: HoldAsked;
  found: NonNullable<HoldAnswer['found']>;
  currency: string;
}) {
  const of = { found, aim: options.aim, seconds, fixedCents, currency };
  const isProven = found.cost === found.costBound;
  return (
    <>
      {provenWords(of).map((words, i) => (
        <p key={words} className="pt-3">
          {i === 0 && !isProven ? <b>{words}</b> : words}
        </p>
      ))}
      <p className="pt-3">
        Choosing again and again what covers most takes {costText(of, greedy.cost)} with {greedy.motors}{' '}
        {greedy.motors === 1 ? 'motor' : 'motors'}, and can cost up to {figure(found.greedy.mostTimes, 2)} times the
        least. Solver {figure(found.seconds, 1)} s. Every set was held against the choice once more.
      </p>
    </>
  );
}
