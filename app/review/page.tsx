import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { areas } from '@/lib/register/queries/areas';
import { review } from '@/lib/register/queries/review';
import { siteSettings } from '@/lib/register/queries/site-settings';
import type { ReviewRuleId } from '@/lib/review/finding';
import { answered } from '../answered';
import { pageAsked, questionWith } from '../lists/asked-for';
import { NotReadNote } from '../lists/not-read-note';
import { PageLinks } from '../lists/page-links';
import { PrintedLine } from '../lists/printed-line';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { today } from '../moment';
import { personOf, whoMay } from '../who-is-here';
import { AcceptHere } from './accept-here';
import { FindingLines } from './finding-lines';
import { GroupTable } from './group-table';
import { reviewAsked } from './review-asked';
import { askedWords, ReviewFilters, readOf } from './review-filters';
import { findingsText, kwhText, moneyText, REVIEW_WORDS } from './review-words';
import { SaidNote } from './said-note';

export const metadata: Metadata = { title: 'Set review' };

const PER_PAGE = 25;

/** The standing list of sets that do not suit their motor: why, what it costs, and what would put it right. */
export default answered(async function ReviewPage({ searchParams }: PageProps<'/review'>) {
  const query = await searchParams;
  const filter = reviewAsked(query);
  const page = pageAsked(query);
  const question = questionWith('/review', query, {});
  const back = `/review${questionWith('/review', query, { page: page === 1 ? null : String(page) })}`;
  const actor = await whoMay('review.read', back);
  const [places, { name, timezone, settings }] = await Promise.all([areas(actor), siteSettings(actor)]);
  const found = await review(actor, { filter, today: today(timezone) }, { page, perPage: PER_PAGE });
  const { rows, sum, groups, sets, empty } = found;
  const { currency } = settings;
  const wordsOf = (key: string, name: string | null) =>
    filter.group === 'rule' ? REVIEW_WORDS[key as ReviewRuleId] : (name ?? 'Of no area');
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Set review</h1>
      <p className="mt-2">
        {sets === 1 ? 'One set was looked at' : `${sets} sets were looked at`}
        {empty > 0 && `, of which ${empty} ${empty === 1 ? 'stands' : 'stand'} empty`}. Bedplate proposes; a competent
        person decides.
      </p>
      <p className="screen-only">
        <Link className="to" href="/review/charts">
          Charts: loads, losses, day by day
        </Link>
      </p>
      <SaidNote query={query} />
      <ReviewFilters filter={filter} areas={places} />
      <NotReadNote query={query} read={readOf(filter)} />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter, places)} />
      {filter.group !== null && groups !== null && groups.length > 0 && (
        <GroupTable
          by={filter.group}
          groups={groups.map(({ key, name, sum: own }) => ({ key, words: wordsOf(key, name), sum: own }))}
          sum={sum}
          query={query}
          currency={currency}
        />
      )}
      <SectionHead title="Findings" aside={sum.count === 0 ? 'none' : findingsText(sum.count)} />
      {sum.accepted > 0 && sum.open > 0 && (
        <p className="pt-3">
          {sum.open} open, {sum.accepted} accepted.
        </p>
      )}
      {sum.kwh > 0 && (
        <p className="pt-3">
          Part load takes {kwhText(sum.kwh)} a year more than full-load efficiency would
          {sum.moneyHundredths > 0 && `, ${moneyText(sum.moneyHundredths / 100, currency)}`}
          {sum.unpriced > 0 && `; of ${sum.unpriced} what it costs is not known`}.
        </p>
      )}
      {rows.length === 0 && (
        <p className="pt-3">
          {sum.count > 0
            ? 'The list ends before this page.'
            : question === ''
              ? 'Every set that was looked at suits its motor, as far as the register knows.'
              : 'No finding is like this.'}
        </p>
      )}
      <FindingLines
        rows={rows}
        currency={currency}
        below={(row) => (
          <AcceptHere row={row} timezone={timezone} back={back} mayAccept={may(actor, 'review.accept')} />
        )}
      />
      <PageLinks
        path="/review"
        query={query}
        page={page}
        perPage={PER_PAGE}
        shown={rows.length}
        all={sum.count}
        what="Findings"
      />
      {may(actor, 'register.export') && sum.count > 0 && <ExportLinks question={question} />}
    </Sheet>
  );
});

/** The list as it is asked for, as a file. */
function ExportLinks({ question }: { question: string }) {
  const more = question.replace(/^\?/, '&');
  return (
    <p className="below-table label screen-only">
      <span>
        This list as a file:{' '}
        <a className="to" href={`/review/export?format=csv${more}`}>
          CSV
        </a>{' '}
        <a className="to" href={`/review/export?format=xlsx${more}`}>
          XLSX
        </a>
      </span>
    </p>
  );
}
