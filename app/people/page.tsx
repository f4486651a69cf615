import type { Metadata } from 'next';
import Link from 'next/link';
import { type Person, people } from '@/lib/register/queries/people';
import { personLinks } from '@/lib/register/queries/person-links';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { AskForm } from '../ask-form';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { momentText } from '../moment';
import { personPath } from '../paths';
import { ROLE_OPTIONS, ROLE_WORDS } from '../role-words';
import { personOf, whoMay } from '../who-is-here';
import { inviteHere, revokeLinkHere } from './ask-people';

export const metadata: Metadata = { title: 'People' };

/** Who may come in, as what, and the links that wait to be used. */
export default answered(async function PeoplePage() {
  const actor = await whoMay('people.manage', '/people');
  const [listed, links, { timezone }] = await Promise.all([people(actor), personLinks(actor), siteSettings(actor)]);
  const isHere = ({ retiredAt }: Person) => retiredAt === null;
  const [here, retired] = [listed.people.filter(isHere), listed.people.filter((one) => !isHere(one))];
  return (
    <Sheet person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">People</h1>
      <p className="mt-2">
        <a className="inline-act" href="#invite">
          Invite somebody
        </a>
      </p>
      {links.length > 0 && (
        <>
          <SectionHead title="Links that wait" aside="each works once" />
          <ul className="lines">
            {links.map(({ linkId, purpose, name, role, expiresAt }) => (
              <li key={linkId}>
                <p className="line-name">
                  <bdi>{name}</bdi>
                </p>
                <span className="line-aside">until {momentText(expiresAt, timezone)}</span>
                <p className="line-below">
                  {purpose === 'invite' ? `Invitation${role === null ? '' : `, ${ROLE_WORDS[role]}`}` : 'New password'}
                </p>
                <div className="line-below">
                  <AskForm
                    id={`link-${linkId}`}
                    action={revokeLinkHere}
                    fields={[{ kind: 'hidden', name: 'linkId', value: linkId }]}
                    button="Revoke"
                  />
                </div>
              </li>
            ))}
          </ul>
        </>
      )}
      <SectionHead title="May sign in" aside={here.length} />
      <PersonLines people={here} timezone={timezone} />
      {retired.length > 0 && (
        <>
          <SectionHead title="Retired" aside={retired.length} />
          <PersonLines people={retired} timezone={timezone} />
        </>
      )}
      {!listed.isAll && <p className="mt-2">The first {listed.people.length} people are shown.</p>}
      <section id="invite">
        <SectionHead title="Invite somebody" aside="by a link" />
        <AskForm
          id="invite-form"
          action={inviteHere}
          fields={[
            { kind: 'text', name: 'name', label: 'Name', autoComplete: 'off' },
            { kind: 'email', name: 'email', label: 'E-mail', autoComplete: 'off', hint: 'They sign in with it.' },
            { kind: 'list', name: 'role', label: 'Role', options: ROLE_OPTIONS, value: 'technician' },
          ]}
          button="Make the link"
          main
        />
      </section>
    </Sheet>
  );
});

function PersonLines({ people, timezone }: { people: readonly Person[]; timezone: string }) {
  return (
    <ul className="lines">
      {people.map(({ userId, name, email, role, lastSignIn }) => (
        <li key={userId}>
          <p className="line-name">
            <Link href={personPath(userId)}>
              <bdi>{name}</bdi>
            </Link>
          </p>
          <span className="line-aside">{ROLE_WORDS[role]}</span>
          <p className="line-below">
            {email !== null && (
              <>
                <bdi>{email}</bdi>,{' '}
              </>
            )}
            {lastSignIn === null ? 'never signed in' : `last signed in ${momentText(lastSignIn, timezone)}`}
          </p>
        </li>
      ))}
    </ul>
  );
}
