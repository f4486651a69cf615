import type { Metadata } from 'next';
import Link from 'next/link';
import { storePlaces } from '@/lib/register/queries/store-places';
import { answered } from '../../answered';
import { Action } from '../../look/action';
import { ActionBar } from '../../look/action-bar';
import { SectionHead } from '../../look/section-head';
import { Sheet } from '../../look/sheet';
import { SavedNote } from '../../record/saved-note';
import { personOf, whoMay } from '../../who-is-here';

export const metadata: Metadata = { title: 'Stores and shelves' };

/** Stores and shelves, to be entered, named anew and retired. */
export default answered(async function PlacesPage({ searchParams }: PageProps<'/stores/places'>) {
  const actor = await whoMay('set.edit', '/stores/places');
  const stores = await storePlaces(actor);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Stores and shelves</h1>
      <SavedNote query={await searchParams} />
      {stores.length === 0 && <p className="pt-3">No store is entered yet.</p>}
      {stores.map(({ storeId, name, shelves }) => (
        <section key={storeId}>
          <SectionHead
            title={<bdi>{name}</bdi>}
            aside={
              <Link className="to" href={`/stores/places/store/${storeId}`}>
                Edit the store
              </Link>
            }
          />
          <ul className="lines">
            {shelves.map(({ shelfId, name: shelf, motors }) => (
              <li key={shelfId}>
                <p className="line-name">
                  <Link href={`/stores/places/shelf/${shelfId}`}>
                    <bdi>{shelf}</bdi>
                  </Link>
                </p>
                <span className="line-aside">{motors === 1 ? '1 motor' : `${motors} motors`}</span>
              </li>
            ))}
          </ul>
          <p className="pt-3">
            <Link className="to" href={`/stores/places/new?store=${storeId}`}>
              Enter a shelf
            </Link>
          </p>
        </section>
      ))}
      <ActionBar>
        <Action href="/stores/places/new">Enter a store</Action>
      </ActionBar>
    </Sheet>
  );
});
