'use client';

import type { Units } from '@/lib/fields/field';
import { SET_GROUPS } from '@/lib/fields/set-fields';
import { SelectField } from '../look/field';
import { RecordForm } from '../record/record-form';
import type { RecordState } from '../record/record-state';
import { saveSet } from './save-set';

/** A set, as one walks up to it: what it is, how it holds, couples, loads, feeds and surrounds its motor. */
export function SetForm({
  first,
  units,
  recordId,
  areas,
}: {
  first: RecordState;
  units: Units;
  recordId: string | null;
  areas: readonly { value: string; words: string }[];
}) {
  return (
    <RecordForm
      save={saveSet}
      first={first}
      units={units}
      groups={SET_GROUPS}
      more={['areaId']}
      afterFirst={(typed, errorOf) => (
        <SelectField
          label="Area"
          name="areaId"
          empty="not told"
          options={areas}
          defaultValue={typed.areaId ?? ''}
          error={errorOf('areaId')}
        />
      )}
      words={{ save: 'Save', hidden: <input type="hidden" name="record" value={recordId ?? ''} /> }}
    />
  );
}
