'use client';

import { NAME_FIELD } from '@/lib/fields/place-fields';
import { RecordForm } from '../../record/record-form';
import type { RecordState } from '../../record/record-state';
import { saveShelf, saveStore } from './save-place';

/** The name of a store, or of a shelf in a store. */
export function PlaceForm({
  thing,
  first,
  recordId,
  storeId,
}: {
  thing: 'store' | 'shelf';
  first: RecordState;
  recordId: string | null;
  storeId: string | null;
}) {
  return (
    <RecordForm
      save={thing === 'store' ? saveStore : saveShelf}
      first={first}
      units="metric"
      groups={[{ title: thing === 'store' ? 'The store' : 'The shelf', fields: [NAME_FIELD] }]}
      words={{
        save: 'Save',
        hidden: (
          <>
            <input type="hidden" name="record" value={recordId ?? ''} />
            <input type="hidden" name="store" value={storeId ?? ''} />
          </>
        ),
      }}
    />
  );
}
