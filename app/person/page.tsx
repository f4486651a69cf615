import type { Metadata } from 'next';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { ActionButton } from '../look/action';
import { Facts } from '../look/facts';
import { Sheet } from '../look/sheet';
import { personOf, whoIsHere } from '../who-is-here';

export const metadata: Metadata = { title: 'Signed in' };

/** Who is signed in, and the way out. */
export default answered(async function PersonPage() {
  const actor = await whoIsHere('/person');
  const { name } = await siteSettings(actor);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">
        <bdi>{actor.name}</bdi>
      </h1>
      <div className="mt-4 border-ink border-t-2">
        <Facts
          rows={[
            { label: 'Role', value: actor.role },
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
      <form method="post" action="/sign-out" className="mt-6 grid">
        <ActionButton second>Sign out</ActionButton>
      </form>
    </Sheet>
  );
});
