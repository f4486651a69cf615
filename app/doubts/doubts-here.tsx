import Link from 'next/link';
import { type Actor, may } from '@/lib/auth/may';
import type { AcceptedDoubt, OpenDoubt } from '@/lib/register/doubts/acceptances';
import { SectionHead } from '../look/section-head';
import { AcceptedLines } from './accepted-lines';
import { DoubtLines } from './doubt-lines';
import { doubtsText } from './rule-words';

export interface DoubtsOfPage {
  open: readonly OpenDoubt[];
  accepted: readonly AcceptedDoubt[];
}

/** On a record's page: its doubts, each with its sum. Nothing where nothing is raised. */
export function DoubtsHere({
  actor,
  doubts: { open, accepted },
  timezone,
  back,
}: {
  actor: Actor;
  doubts: DoubtsOfPage;
  timezone: string;
  back: string;
}) {
  if (open.length + accepted.length === 0) return null;
  const mayAccept = may(actor, 'doubt.accept');
  return (
    <section id="doubts" className="screen-only">
      <SectionHead
        title="Doubts"
        aside={
          <Link className="to" href="/doubts">
            All of the site
          </Link>
        }
      />
      <DoubtLines
        doubts={open}
        timezone={timezone}
        back={back}
        may={{ edit: may(actor, 'motor.edit'), accept: mayAccept }}
      />
      {accepted.length > 0 && (
        <details>
          <summary className="more">{accepted.length} accepted</summary>
          <AcceptedLines doubts={accepted} timezone={timezone} back={back} mayWithdraw={mayAccept} />
        </details>
      )}
    </section>
  );
}

/** "1 doubt", leading to it further down the page; nothing where none stands. */
export function DoubtsLink({ doubts: { open } }: { doubts: DoubtsOfPage }) {
  return open.length === 0 ? null : (
    <p className="pt-3 screen-only">
      <a className="to" href="#doubts">
        {doubtsText(open.length)}
      </a>
    </p>
  );
}
