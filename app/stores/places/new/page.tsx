import type { Metadata } from 'next';
import { storePlaces } from '@/lib/register/queries/store-places';
import { answered } from '../../../answered';
import { Sheet } from '../../../look/sheet';
import { asked } from '../../../record/record-state';
import { personOf, whoMay } from '../../../who-is-here';
import { PlaceForm } from '../place-form';

export const metadata: Metadata = { title: 'Enter a store or shelf' };

/** Enters a store; or, where the address names one, a shelf in it. */
export default answered(async function NewPlacePage({ searchParams }: PageProps<'/stores/places/new'>) {
  const actor = await whoMay('set.edit', '/stores/places/new');
  const { store } = await searchParams;
  const known = (await storePlaces(actor)).find(({ storeId }) => storeId === store) ?? null;
  return (
    <Sheet person={personOf(actor)} back={{ href: '/stores/places', words: 'Stores and shelves' }}>
      <h1 className="page">
        {known === null ? (
          'Enter a store'
        ) : (
          <>
            Enter a shelf in <bdi>{known.name}</bdi>
          </>
        )}
      </h1>
      <PlaceForm
        thing={known === null ? 'store' : 'shelf'}
        first={asked({}, null)}
        recordId={null}
        storeId={known === null ? null : known.storeId}
      />
    </Sheet>
  );
});
