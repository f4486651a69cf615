import type { Metadata } from 'next';
import { ownSessions } from '@/lib/register/queries/own-sessions';
import { ownUnits } from '@/lib/register/queries/own-units';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { AskForm } from '../ask-form';
import { Facts } from '../look/facts';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { endSessionsHere } from '../people/ask-people';
import { ROLE_WORDS } from '../role-words';
import { SessionLines } from '../session-lines';
import { personOf, sessionHere, whoMay } from '../who-is-here';
import { changePasswordHere, changeUnitsHere } from './ask-self';
import { SignOutForm } from './sign-out-form';

export const metadata: Metadata = { title: 'Signed in' };

/** Who is signed in, where, with which password and units, and the way out. */
export default answered(async function PersonPage() {
  const actor = await whoMay('self.manage', '/person');
  const [{ name, timezone }, sessions, units, here] = await Promise.all([
    siteSettings(actor),
    ownSessions(actor),
    ownUnits(actor),
    sessionHere(),
  ]);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">
        <bdi>{actor.name}</bdi>
      </h1>
      <div className="mt-4 border-ink border-t-2">
        <Facts
          rows={[
            { label: 'Role', value: ROLE_WORDS[actor.role] },
            {
              label: 'Site',
              value: (
                <a className="inline-act" href="/site">
                  <bdi>{name}</bdi>
                </a>
              ),
            },
          ]}
        />
      </div>
      <SignOutForm />
      <SectionHead title="Units" />
      <AskForm
        id="units-form"
        action={changeUnitsHere}
        fields={[{ kind: 'list', name: 'units', label: 'Figures are shown in', options: UNIT_OPTIONS, value: units }]}
        button="Save the units"
      />
      <SectionHead title="Where you are signed in" />
      <SessionLines sessions={sessions} timezone={timezone} own={here?.sessionId ?? null} />
      {sessions.length > 1 && (
        <AskForm
          id="sessions-form"
          action={endSessionsHere}
          fields={[{ kind: 'hidden', name: 'userId', value: actor.userId }]}
          button="End all but this one"
        />
      )}
      <SectionHead title="Password" aside="ends other sessions" />
      <AskForm
        id="password-form"
        action={changePasswordHere}
        fields={[
          { kind: 'password', name: 'old', label: 'Old password', autoComplete: 'current-password' },
          {
            kind: 'password',
            name: 'password',
            label: 'New password',
            autoComplete: 'new-password',
            hint: 'At least 12 characters, any of them. Pasting works.',
          },
        ]}
        button="Change the password"
      />
    </Sheet>
  );
});

const UNIT_OPTIONS = [
  { value: 'metric', words: 'Metric: mm, kW' },
  { value: 'us', words: 'US: in, hp' },
];
