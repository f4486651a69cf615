import type { Metadata } from 'next';
import { may } from '@/lib/auth/may';
import { doubts } from '@/lib/register/queries/doubts';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { pageAsked, questionWith, ruleAsked } from '../lists/asked-for';
import { NotReadNote } from '../lists/not-read-note';
import { PageLinks } from '../lists/page-links';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { today } from '../moment';
import { personOf, whoMay } from '../who-is-here';
import { AcceptedLines } from './accepted-lines';
import { DoubtLines } from './doubt-lines';
import { RuleTable } from './rule-table';
import { doubtsText, RULE_WORDS } from './rule-words';
import { SaidNote } from './said-note';

export const metadata: Metadata = { title: 'Doubts' };

const PER_PAGE = 30;

/** What cannot be right on the site's plates and sets, and what a person let stand. */
export default answered(async function DoubtsPage({ searchParams }: PageProps<'/doubts'>) {
  const query = await searchParams;
  const rule = ruleAsked(query);
  const page = pageAsked(query);
  const back = `/doubts${questionWith('/doubts', query, { page: page === 1 ? null : String(page) })}`;
  const actor = await whoMay('register.read', back);
  const { timezone } = await siteSettings(actor);
  const found = await doubts(actor, { rule, today: today(timezone) }, { page, perPage: PER_PAGE });
  const { open, all, accepted, acceptedAll, counts, isAll } = found;
  const mayAccept = may(actor, 'doubt.accept');
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Doubts</h1>
      <p className="mt-2">Figures of plates and sets that exclude each other, or that nobody builds.</p>
      <SaidNote query={query} />
      <NotReadNote query={query} read={{ rule }} />
      {!isAll && <p className="mt-2">The site has more records than are looked at here: the rest is not judged.</p>}
      {counts.length === 0 && (
        <p className="pt-3">Nothing is raised: every plate and every set can be right as it stands.</p>
      )}
      {counts.length > 0 && (
        <div className="cols areas">
          <div className="d">
            <section>
              <SectionHead title="By what they are about" />
              <RuleTable counts={counts} rule={rule} />
            </section>
          </div>
          <div className="b">
            <SectionHead
              title={rule === null ? 'Standing' : `Standing: ${RULE_WORDS[rule]}`}
              aside={all === 0 ? 'none' : doubtsText(all)}
            />
            {open.length === 0 && all > 0 && <p className="pt-3">The list ends before this page.</p>}
            <DoubtLines
              doubts={open}
              timezone={timezone}
              back={back}
              may={{ edit: may(actor, 'motor.edit'), accept: mayAccept }}
            />
            <PageLinks
              path="/doubts"
              query={query}
              page={page}
              perPage={PER_PAGE}
              shown={open.length}
              all={all}
              what="Doubts"
            />
            {acceptedAll > 0 && (
              <section id="accepted">
                <SectionHead
                  title={rule === null ? 'Accepted' : `Accepted: ${RULE_WORDS[rule]}`}
                  aside={accepted.length < acceptedAll ? `the last ${accepted.length} of ${acceptedAll}` : acceptedAll}
                />
                <AcceptedLines doubts={accepted} timezone={timezone} back={back} mayWithdraw={mayAccept} />
              </section>
            )}
          </div>
        </div>
      )}
    </Sheet>
  );
});
