import type { HoldAsked } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import { figure } from '@/lib/units/figure';

/** What was proven of a choice and what not: where the time was over first, between which figures the least lies. */
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
  const isCount = options.aim === 'fewest';
  const amount = (cost: number) =>
    isCount ? `${cost} ${cost === 1 ? 'motor' : 'motors'}` : `${figure(cost / 100, 2)} ${currency}`;
  const text = (cost: number) => amount(isCount ? cost : cost + fixedCents);
  const gap = found.cost - found.costBound;
  return (
    <>
      {gap === 0 ? (
        <p className="pt-3">Proven: no choice takes less than {text(found.cost)}.</p>
      ) : (
        <p className="pt-3">
          <b>
            {found.ended === 'time' ? `The limit of ${seconds} s came before the proof. ` : 'Not proven. '}
            This choice takes {text(found.cost)}, and none takes less than {text(found.costBound)}: a gap of{' '}
            {amount(gap)}, {figure((100 * gap) / (found.cost + (isCount ? 0 : fixedCents)), 1)} %.
          </b>{' '}
          {found.ended === 'time' && 'It covers every set all the same; more time, or fewer sets, may close the gap.'}
        </p>
      )}
      {gap === 0 && found.tieBound < found.tie && (
        <p className="pt-3">
          {found.ended === 'time' && `The limit of ${seconds} s came then: `}
          {isCount
            ? `of choices of so many motors this one buys ${found.tie}, and that none buys fewer than ${found.tieBound} is all that was proven.`
            : `of choices at this cost this one holds ${found.tie} motors, and that none holds fewer than ${found.tieBound} is all that was proven.`}
        </p>
      )}
      {found.ended === 'none' && found.says !== null && (
        <p className="pt-3">The solver’s answer was not used, and the greedy choice stands: {found.says}.</p>
      )}
      <p className="pt-3">
        Choosing again and again what covers most takes {text(greedy.cost)} with {greedy.motors}{' '}
        {greedy.motors === 1 ? 'motor' : 'motors'}, and can cost up to {figure(found.greedy.mostTimes, 2)} times the
        least. Solver {figure(found.seconds, 1)} s. Every set was held against the choice once more.
      </p>
    </>
  );
}
