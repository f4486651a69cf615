import Link from 'next/link';
import { DataTable } from '@/app/look/data-table';
import { SectionHead } from '@/app/look/section-head';
import { isoDay, today } from '@/app/moment';
import { moneyText } from '@/app/review/review-words';
import type { Actor } from '@/lib/auth/may';
import { reviewMonth } from '@/lib/register/queries/review-month';
import { siteSettings } from '@/lib/register/queries/site-settings';
import type { MonthOfDays, ReviewedDay, Stretch } from '@/lib/review/charts/month-of-days';
import type { Month } from './month';

/** How the set review went in a month, by the days that are kept of it. */
export async function ReviewMonthHere({ actor, month }: { actor: Actor; month: Month }) {
  const { settings, timezone } = await siteSettings(actor);
  const review = await reviewMonth(actor, month.days, today(timezone));
  const { days, missing } = review;
  const [first, last] = [days[0], days.at(-1)];
  return (
    <>
      <SectionHead title="Set review" aside={days.length === 1 ? '1 day kept' : `${days.length} days kept`} />
      {first === undefined || last === undefined ? (
        <p className="pt-3">How the review stood is not kept of any day of this month.</p>
      ) : (
        <>
          <Changed review={review} />
          <StoodTable first={first} last={last} currency={settings.currency} />
          {missing.length > 0 && (
            <p className="pt-3">
              Not kept, and nothing is known of: {missing.slice(0, SHOWN).map(stretchText).join(', ')}
              {missing.length > SHOWN && ` and ${missing.length - SHOWN} more stretches`}.
            </p>
          )}
        </>
      )}
      <p className="below-table screen-only">
        <Link className="to" href="/review">
          The review as it stands now
        </Link>
        <Link className="to" href="/review/charts">
          Day by day
        </Link>
      </p>
    </>
  );
}

/** As many stretches of days as are told one by one. */
const SHOWN = 12;

function Changed({ review: { days, before, opened, closed, untold } }: { review: MonthOfDays }) {
  if (opened === null || closed === null)
    return <p className="pt-3">What opened and what was closed is not known: no day of this month tells it.</p>;
  return (
    <p className="pt-3">
      <b>{opened}</b> opened, <b>{closed}</b> closed, counted from each kept day to the next
      {before !== null && days[0]?.opened !== null && `, the first one against ${isoDay(before)}`}. What came and went
      between two kept days is not in it; a finding that was accepted still stands.
      {untold > 0 && ` ${untold === 1 ? 'One day does' : `${untold} days do`} not tell what changed on it.`}
    </p>
  );
}

function StoodTable({ first, last, currency }: { first: ReviewedDay; last: ReviewedDay; currency: string | null }) {
  const money = ({ moneyHundredths, unpriced }: ReviewedDay) =>
    `${moneyText(moneyHundredths / 100, currency)}${unpriced === 0 ? '' : `, and ${unpriced} not known`}`;
  const isOne = first.day === last.day;
  return (
    <DataTable name="The set review on the first and the last kept day">
      <thead>
        <tr>
          <th scope="col">At the end of</th>
          <th scope="col" className="num">
            Open
          </th>
          <th scope="col" className="num">
            Accepted
          </th>
          <th scope="col" className="num">
            Money a year, open
          </th>
        </tr>
      </thead>
      <tbody>
        {(isOne ? [last] : [first, last]).map((one) => (
          <tr key={one.day}>
            <th scope="row">{isoDay(one.day)}</th>
            <td className="num">{one.open}</td>
            <td className="num">{one.accepted}</td>
            <td className="num">{money(one)}</td>
          </tr>
        ))}
        {!isOne && (
          <tr>
            <th scope="row">Difference</th>
            <td className="num">{signed(last.open - first.open)}</td>
            <td className="num">{signed(last.accepted - first.accepted)}</td>
            <td className="num">
              {last.moneyHundredths > first.moneyHundredths && '+'}
              {moneyText((last.moneyHundredths - first.moneyHundredths) / 100, currency)}
            </td>
          </tr>
        )}
      </tbody>
    </DataTable>
  );
}

const signed = (count: number): string => (count > 0 ? `+${count}` : count < 0 ? `−${-count}` : '0');

const stretchText = ({ first, last }: Stretch): string =>
  first === last ? isoDay(first) : `${isoDay(first)} to ${isoDay(last)}`;
