import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { areas } from '@/lib/register/queries/areas';
import { answered } from '../answered';
import { Action } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';

export const metadata: Metadata = { title: 'Areas' };

/** The parts of the plant, each with its number of sets. */
export default answered(async function AreasPage() {
  const actor = await whoMay('register.read', '/areas');
  const known = await areas(actor);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Areas</h1>
      {known.length === 0 && <p className="pt-3">No area is entered yet.</p>}
      <ul className="lines">
        {known.map(({ areaId, name, sets }) => (
          <li key={areaId}>
            <p className="line-name">
              <Link href={`/areas/${areaId}`}>
                <bdi>{name}</bdi>
              </Link>
            </p>
            <span className="line-aside">{sets === 1 ? '1 set' : `${sets} sets`}</span>
          </li>
        ))}
      </ul>
      {may(actor, 'set.edit') && (
        <ActionBar>
          <Action href="/areas/new">Enter an area</Action>
        </ActionBar>
      )}
    </Sheet>
  );
});
