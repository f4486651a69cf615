'use client';

import type { Units } from '@/lib/fields/field';
import { AREA_FIELDS } from '@/lib/fields/place-fields';
import { RecordForm } from '../record/record-form';
import type { RecordState } from '../record/record-state';
import { saveArea } from './save-area';

/** An area and what surrounds every set in it. */
export function AreaForm({ first, units, recordId }: { first: RecordState; units: Units; recordId: string | null }) {
  return (
    <RecordForm
      save={saveArea}
      first={first}
      units={units}
      groups={[{ title: 'The area', aside: 'holds for its sets where they tell nothing else', fields: AREA_FIELDS }]}
      words={{ save: 'Save', hidden: <input type="hidden" name="record" value={recordId ?? ''} /> }}
    />
  );
}
