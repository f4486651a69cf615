import Link from 'next/link';
import type { HoldAsked } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import { ActionButton } from '../look/action';
import { SectionHead } from '../look/section-head';
import { candidatesPath } from '../paths';
import { Assumed } from './assumed';
import { HeldTable } from './held-table';
import { REFUSAL_WORDS } from './hold-words';
import { Proven } from './proven';

/** As many uncovered sets as are told one by one. */
const SHOWN = 60;

/** The choice: first what nothing covers, then the table, then what was proven and what was assumed. */
export function HoldAnswerParts({
  answer,
  asked,
  currency,
}: {
  answer: HoldAnswer;
  asked: HoldAsked;
  currency: string;
}) {
  const { sets, unservable, lines, found } = answer;
  const covered = sets.length - unservable.length;
  return (
    <>
      {found === null && (
        <p className="pt-4">
          <b>
            {sets.length === 1
              ? 'Nothing that may be chosen could go into this set: there is nothing to hold for it.'
              : `Nothing that may be chosen could go into any of these ${sets.length} sets: there is nothing to hold for them.`}
          </b>{' '}
          Why stands at each set below; allow more work, hours, checks, days, or another source, and choose again.
        </p>
      )}
      {unservable.length > 0 && (
        <section id="uncovered">
          <SectionHead title="Covered by nothing that may be chosen" aside={unservable.length} />
          <ul className="lines">
            {unservable.slice(0, SHOWN).map(({ of, because }) => (
              <li key={of.setId} className="urgent">
                <p className="line-name">
                  <Link href={candidatesPath(of.tag)}>
                    <bdi>{of.tag}</bdi>
                  </Link>
                </p>
                <span className="line-aside">
                  {of.criticality === null ? 'criticality not told' : `criticality ${of.criticality} of 4`}
                </span>
                <p className="line-below">{becauseText(because)}</p>
              </li>
            ))}
          </ul>
          {unservable.length > SHOWN && <p className="label pt-2">and {unservable.length - SHOWN} more</p>}
        </section>
      )}
      {found !== null && (
        <section id="held">
          <SectionHead
            title={`${lines.length} different ${lines.length === 1 ? 'motor' : 'motors'}`}
            aside={`for ${covered} of ${sets.length} sets`}
          />
          <HeldTable lines={lines} chancePct={Math.round(asked.chance * 100)} currency={currency} />
          <p className="flex flex-wrap gap-2 pt-3 print:hidden">
            <ActionButton second form="hold" name="choose" value="1">
              Choose without the ticked
            </ActionButton>
          </p>
          <Pooled lines={lines} />
          <Proven answer={answer} asked={asked} found={found} currency={currency} />
        </section>
      )}
      <Assumed answer={answer} asked={asked} currency={currency} />
    </>
  );
}

function becauseText(because: HoldAnswer['unservable'][number]['because']): string {
  const parts = Object.entries(because).map(
    ([why, count]) => `${count} ${REFUSAL_WORDS[why as keyof typeof REFUSAL_WORDS]}`,
  );
  return parts.length === 0
    ? 'No motor on a shelf and no standard rating could go in.'
    : `Could go in and does not count: ${parts.join(', ')}.`;
}

function Pooled({ lines }: Pick<HoldAnswer, 'lines'>) {
  const stocks = lines.flatMap(({ stock }) => (stock === null ? [] : [stock]));
  if (stocks.length === 0) return null;
  const held = stocks.reduce((sum, one) => sum + one.held, 0);
  const apart = stocks.reduce((sum, one) => sum + one.apart, 0);
  return (
    <p className="pt-3">
      Shared, {held} {held === 1 ? 'motor keeps' : 'motors keep'} the chance; with spares of its own for each set it
      would take {apart}: {apart - held} fewer.
    </p>
  );
}
