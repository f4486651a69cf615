import type { Metadata } from 'next';
import Link from 'next/link';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { AskForm } from '@/app/ask-form';
import type { AskField } from '@/app/ask-state';
import { Empty } from '@/app/look/empty';
import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { momentText } from '@/app/moment';
import { personPath, written } from '@/app/paths';
import { ROLE_OPTIONS, ROLE_WORDS } from '@/app/role-words';
import { SessionLines } from '@/app/session-lines';
import { personOf, sessionHere, whoMay } from '@/app/who-is-here';
import type { Person } from '@/lib/register/queries/people';
import { personById } from '@/lib/register/queries/person-by-id';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { anonymiseHere, bringBackHere, changeRoleHere, endSessionsHere, resetHere, retireHere } from '../ask-people';

export const metadata: Metadata = { title: 'Person' };

/** One person: role, password, sessions, and the way out. */
export default answered(async function PersonByIdPage({ params }: PageProps<'/people/[id]'>) {
  const id = written((await params).id);
  const actor = await whoMay('people.manage', personPath(id));
  const [person, { timezone }, session] = await Promise.all([
    personById(actor, id),
    siteSettings(actor),
    sessionHere(),
  ]);
  const bar = { person: personOf(actor), current: '/desk', back: { href: '/people', words: 'People' } } as const;
  if (person === null) {
    answerStatus(404);
    return (
      <Sheet {...bar}>
        <h1 className="page">Nobody of this site</h1>
        <Empty
          isWholePage
          title="The address names no person"
          says="Everybody who may come in stands on the list of people."
        />
      </Sheet>
    );
  }
  const { name, email, role, retiredAt, lastSignIn, sessions } = person;
  return (
    <Sheet {...bar}>
      <h1 className="page">
        <bdi>{name}</bdi>
      </h1>
      <div className="mt-4 border-ink border-t-2">
        <Facts
          rows={[
            { label: 'Role', value: ROLE_WORDS[role] },
            { label: 'E-mail', value: email === null ? 'no longer kept' : <bdi>{email}</bdi> },
            { label: 'Last sign-in', value: lastSignIn === null ? 'never' : momentText(lastSignIn, timezone) },
            {
              label: 'Access',
              value: retiredAt === null ? 'may sign in' : `retired ${momentText(retiredAt, timezone)}`,
            },
          ]}
        />
      </div>
      <p className="pt-3">
        <Link className="to" href={`/audit?who=${encodeURIComponent(id)}`}>
          What they changed
        </Link>
      </p>
      {retiredAt === null ? (
        <>
          <SectionHead title="Role" />
          <p className="pt-3">A change ends their sessions and tokens.</p>
          <AskForm
            id="role-form"
            key={role}
            action={changeRoleHere}
            fields={[
              whom(id),
              { kind: 'hidden', name: 'from', value: role },
              { kind: 'list', name: 'role', label: 'Role', options: ROLE_OPTIONS, value: role },
            ]}
            button="Change the role"
          />
          <SectionHead title="New password" aside="by a link" />
          <AskForm id="reset-form" action={resetHere} fields={[whom(id)]} button="Make the link" />
          <SectionHead title="Signed in" />
          <SessionLines sessions={sessions} timezone={timezone} own={session?.sessionId ?? null} />
          {sessions.length > 1 && (
            <AskForm id="sessions-form" action={endSessionsHere} fields={[whom(id)]} button="End all sessions" />
          )}
          <SectionHead title="Retire" />
          <p className="pt-3">Ends sessions, tokens and links at once. What the person did stays theirs.</p>
          <AskForm
            id="retire-form"
            action={retireHere}
            fields={[whom(id), sure('The person may no longer come in')]}
            button="Retire"
          />
        </>
      ) : (
        <Retired person={person} />
      )}
    </Sheet>
  );
});

function Retired({ person: { userId, email } }: { person: Person }) {
  if (email === null) return <p className="pt-3">Name and address are no longer kept. This cannot be undone.</p>;
  return (
    <>
      <SectionHead title="Bring back" />
      <p className="pt-3">With the role and the password they had. Their tokens stay dead.</p>
      <AskForm id="back-form" action={bringBackHere} fields={[whom(userId)]} button="Bring back" />
      <SectionHead title="Take the name away" aside="cannot be undone" />
      <p className="pt-3">Name, address and password go for good. Swaps and changes stand, done by “A person”.</p>
      <AskForm
        id="name-form"
        action={anonymiseHere}
        fields={[whom(userId), sure('The name may go for good')]}
        button="Take the name away"
      />
    </>
  );
}

const whom = (userId: string): AskField => ({ kind: 'hidden', name: 'userId', value: userId });
const sure = (words: string): AskField => ({
  kind: 'ticks',
  name: 'sure',
  label: 'Sure?',
  options: [{ value: 'yes', words }],
  values: [],
});
