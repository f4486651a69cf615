import type { HoldAsked } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import { meanRate } from '@/lib/spares/demand/failure-rate';
import { nameOf } from '@/lib/spares/hold/price-list';
import type { ToldPrices } from '@/lib/spares/hold/price-of';
import { figure } from '@/lib/units/figure';
import { SectionHead } from '../look/section-head';

/** Every figure that nobody measured here, and where it is from. */
export function Assumed({
  answer: { rate, settings, idle },
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
      <dl className="kv in-words">
        <div>
          <dt>Failures of one set in a year</dt>
          <dd>
            {figure(meanRate(after), 4)}. Published {figure(published.perYear, 4)} ({published.what}; {published.cite}),
            taken as seen in {figure(prior.years, 0)} set-years; here{' '}
            {seen.failures === 1 ? '1 fault' : `${seen.failures} faults`} in {figure(seen.years, 1)} set-years, those of
            the pump among them. A fault from before its set was in the register is not counted.
          </dd>
        </div>
        <div>
          <dt>Price of a motor to buy</dt>
          <dd>
            {pricesText(price, currency)} What is on a shelf costs nothing more.
            {idle.length > 0 &&
              ` Lines of the list that price nothing which could be bought for these sets: ${idle.map((one) => `${one.line} (${nameOf(one)})`).join('; ')}.`}
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

function pricesText({ list, each, perKw }: ToldPrices, currency: string): string {
  const rule =
    each === null || perKw === null ? null : `${figure(each, 2)} and ${figure(perKw, 2)} for each kW, ${currency}`;
  const lines = `by the list of ${list.length === 1 ? '1 line' : `${list.length} lines`}`;
  if (list.length === 0) return rule === null ? 'Not told.' : `${rule}; typed in, not offered.`;
  return rule === null
    ? `Typed in, not offered: ${lines}; what it does not name has no price and is not chosen where the aim is a cost.`
    : `Typed in, not offered: ${lines}, and where it names nothing ${rule}.`;
}
