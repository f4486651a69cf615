import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { PrintedLine } from '@/app/lists/printed-line';
import { DataTable } from '@/app/look/data-table';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { isoDay } from '@/app/moment';
import { personOf, whoMay } from '@/app/who-is-here';
import { type KnownDay, reviewCharts } from '@/lib/register/queries/review-charts';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { everyDay } from '@/lib/review/charts/every-day';
import type { LoadHistogram } from '@/lib/review/charts/load-histogram';
import type { AreaLoss } from '@/lib/review/charts/losses-by-area';
import { kwhText, moneyText } from '../review-words';
import { BarChart } from './bar-chart';
import { ColumnChart } from './column-chart';

export const metadata: Metadata = { title: 'Set review, charts' };

/** How loaded the site's motors are, what they lose in a year by area, and how the review went day by day. */
export default answered(async function ReviewChartsPage() {
  const actor = await whoMay('review.read', '/review/charts');
  const [{ name, timezone, settings }, { loads, losses, days }] = await Promise.all([
    siteSettings(actor),
    reviewCharts(actor),
  ]);
  const { currency } = settings;
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/review', words: 'Set review' }}>
      <h1 className="page">Set review, charts</h1>
      <PrintedLine site={name} timezone={timezone} asked={[]} />
      <Loads loads={loads} />
      <Losses losses={losses} currency={currency} />
      <Days days={days} currency={currency} />
    </Sheet>
  );
});

/** Under this load a motor counts as oversized. */
const OVERSIZED_PCT = 40;

function Loads({ loads: { bins, unknown } }: { loads: LoadHistogram }) {
  const words = (fromPct: number, toPct: number | null) =>
    toPct === null ? `${fromPct} % and more` : `${fromPct} to ${toPct} %`;
  return (
    <section>
      <SectionHead title="Load at duty" aside="sets, by per cent of rated power" />
      <ColumnChart
        id="loads"
        name="How many sets are loaded how far at duty, in steps of ten per cent; the table below has the figures"
        unit="sets"
        across="load, % of rated power"
        columns={bins.map(({ fromPct, toPct, sets }) => ({
          label: toPct === null ? `${fromPct}+` : `${fromPct}–${toPct}`,
          value: sets,
          isHatched: fromPct < OVERSIZED_PCT,
        }))}
      />
      <p className="label pt-2">
        Hatched: under {OVERSIZED_PCT} %, oversized.{' '}
        {unknown > 0 && `Of ${unknown} ${unknown === 1 ? 'set' : 'sets'} the load is not known.`}
      </p>
      <DataTable name="Sets by load at duty">
        <thead>
          <tr>
            <th scope="col">Load</th>
            <th scope="col" className="num">
              Sets
            </th>
          </tr>
        </thead>
        <tbody>
          {bins.map(({ fromPct, toPct, sets }) => (
            <tr key={fromPct}>
              <th scope="row">{words(fromPct, toPct)}</th>
              <td className="num">{sets}</td>
            </tr>
          ))}
        </tbody>
      </DataTable>
    </section>
  );
}

function Losses({ losses, currency }: { losses: readonly AreaLoss[]; currency: string | null }) {
  const nameOf = (area: string | null) => area ?? 'Of no area';
  const isKnown = losses.some(({ known }) => known > 0);
  return (
    <section>
      <SectionHead title="What the motors lose" aside="kWh a year, at duty all hours run" />
      {isKnown ? (
        <BarChart
          name="What the motors of each area lose in a year, in kilowatt-hours; the table below has the figures"
          unit="kWh a year"
          bars={losses.map(({ area, kwh }) => ({ label: nameOf(area), value: kwh }))}
        />
      ) : (
        <p className="pt-3">Of no set it is known: it takes the load, the efficiency and the hours run in a year.</p>
      )}
      <DataTable name="Losses by area">
        <thead>
          <tr>
            <th scope="col">Area</th>
            <th scope="col" className="num">
              Energy a year
            </th>
            <th scope="col" className="num">
              Money a year
            </th>
            <th scope="col" className="num">
              Sets
            </th>
            <th scope="col" className="num">
              Not known of
            </th>
          </tr>
        </thead>
        <tbody>
          {losses.map(({ area, kwh, moneyHundredths, known, unknown }) => (
            <tr key={area ?? ''}>
              <th scope="row">
                <bdi>{nameOf(area)}</bdi>
              </th>
              <td className="num">{known === 0 ? '–' : kwhText(kwh)}</td>
              <td className="num">{moneyHundredths === 0 ? '–' : moneyText(moneyHundredths / 100, currency)}</td>
              <td className="num">{known}</td>
              <td className="num">{unknown}</td>
            </tr>
          ))}
        </tbody>
      </DataTable>
    </section>
  );
}

/** As many days as the chart shows; the table has all that are kept of a year. */
const SHOWN_DAYS = 90;

const AT_THE_END = 'at the end of the day';

/** "23 Oct"; the year stands in the table. */
const shortDay = (day: string): string => isoDay(day).replace(/ \d{4}$/, '');

function Days({ days, currency }: { days: readonly KnownDay[]; currency: string | null }) {
  const shown = everyDay(days).slice(-SHOWN_DAYS);
  const columnsOf = (value: (of: KnownDay) => number) =>
    shown.map(({ day, of }) => ({ label: shortDay(day), value: of === null ? null : value(of) }));
  return (
    <section>
      <SectionHead title="Day by day" aside="open findings and what they cost a year" />
      {days.length === 0 ? (
        <p className="pt-3">No day is kept yet. How the review stands is kept once a day from now on.</p>
      ) : (
        <>
          <ColumnChart
            id="open"
            name="Open findings at the end of each day; the table below has the figures"
            unit="open findings"
            across={AT_THE_END}
            columns={columnsOf(({ open }) => open)}
          />
          <ColumnChart
            id="money"
            name="What the open findings cost in a year, as they stood at the end of each day; the table below has the figures"
            unit={`${currency ?? 'money'} a year`}
            across={AT_THE_END}
            columns={columnsOf(({ moneyHundredths }) => moneyHundredths / 100)}
          />
          {shown.some(({ of }) => of === null) && (
            <p className="label pt-2">A place without a column: that day is not kept, and nothing is known of it.</p>
          )}
          <DataTable name="Findings day by day">
            <thead>
              <tr>
                <th scope="col">Day</th>
                <th scope="col" className="num">
                  Open
                </th>
                <th scope="col" className="num">
                  Accepted
                </th>
                <th scope="col" className="num">
                  Money a year
                </th>
              </tr>
            </thead>
            <tbody>
              {[...days].reverse().map(({ day, open, accepted, moneyHundredths }) => (
                <tr key={day}>
                  <th scope="row">{isoDay(day)}</th>
                  <td className="num">{open}</td>
                  <td className="num">{accepted}</td>
                  <td className="num">{moneyText(moneyHundredths / 100, currency)}</td>
                </tr>
              ))}
            </tbody>
          </DataTable>
        </>
      )}
    </section>
  );
}
