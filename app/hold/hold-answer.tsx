import Link from 'next/link';
import type { HoldAsked } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import { meanRate } from '@/lib/spares/demand/failure-rate';
import { figure } from '@/lib/units/figure';
import { SectionHead } from '../look/section-head';
import { candidatesPath } from '../paths';
import { HeldTable } from './held-table';
import { REFUSAL_WORDS } from './hold-words';

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

function Proven({
  answer: { greedy, fixedCents },
  asked,
  found,
  currency,
}: {
  answer: HoldAnswer;
  asked: HoldAsked;
  found: NonNullable<HoldAnswer['found']>;
  currency: string;
}) {
  const isCount = asked.options.aim === 'fewest';
  const text = (cost: number) => (isCount ? `${cost} motors` : `${figure((cost + fixedCents) / 100, 2)} ${currency}`);
  const gap = found.cost - found.costBound;
  return (
    <p className="pt-3">
      {gap === 0
        ? `Proven: no choice takes less than ${text(found.cost)}.`
        : `Not proven within ${asked.seconds} s: this choice takes ${text(found.cost)}, and none takes less than ${text(found.costBound)}.`}{' '}
      {found.ended === 'none' && found.says !== null && `The solver’s answer was not used: ${found.says}. `}
      Choosing again and again what covers most takes {text(greedy.cost)} with {greedy.motors} motors, and can cost up
      to {figure(found.greedy.mostTimes, 2)} times the least. Solver {figure(found.seconds, 1)} s. Every set was held
      against the choice once more.
    </p>
  );
}

function Assumed({
  answer: { rate, settings },
  asked,
  currency,
}: {
  answer: HoldAnswer;
  asked: HoldAsked;
  currency: string;
}) {
  const { published, prior, seen, after } = rate;
  const { price, days, options } = asked;
  return (
    <section id="assumed">
      <SectionHead title="What is assumed" />
      <dl className="kv">
        <div>
          <dt>Failures of one set in a year</dt>
          <dd>
            {figure(meanRate(after), 4)}. Published {figure(published.perYear, 4)} ({published.what}; {published.cite}),
            taken as seen in {figure(prior.years, 0)} set-years; here{' '}
            {seen.failures === 1 ? '1 fault' : `${seen.failures} faults`} in {figure(seen.years, 1)} set-years, those of
            the pump among them.
          </dd>
        </div>
        <div>
          <dt>Price of a motor to buy</dt>
          <dd>
            {price.each === null || price.perKw === null
              ? 'not told'
              : `${figure(price.each, 2)} and ${figure(price.perKw, 2)} for each kW, ${currency}; typed in, not offered`}
            . What is on a shelf costs nothing more.
          </dd>
        </div>
        <div>
          <dt>Days until a used one is made good</dt>
          <dd>
            {days === null
              ? `of one to buy the site’s days of delivery (${daysText(settings.deliveryDays)}, to order ${daysText(settings.specialDeliveryDays)}), of one on a shelf its days of repair (${daysText(settings.repairDays)})`
              : `${figure(days, 0)}, typed in`}
          </dd>
        </div>
        <div>
          <dt>An hour of work</dt>
          <dd>
            {options.perHour === null ? 'not told' : `${figure(options.perHour, 2)} ${currency}`}; counted only where
            the aim says so, over {figure(options.years, 0)} years
          </dd>
        </div>
      </dl>
    </section>
  );
}

const daysText = (days: number | null) => (days === null ? 'not told' : figure(days, 0));
