'use server';

import { AREA_FIELDS } from '@/lib/fields/place-fields';
import { edited, objectOf } from '@/lib/fields/state';
import { registerArea } from '@/lib/register/commands/register-place';
import type { RecordState } from '../record/record-state';
import { type RecordKind, saveRecord } from '../record/save-record';

const KIND: RecordKind = {
  thing: 'area',
  may: 'set.edit',
  fields: AREA_FIELDS,
  hasRatings: false,
  more: [],
  shown: () => ({}),
  edit: async () => ({ edit: {}, problems: [] }),
  inputOf: (path) => path,
  make: (actor, edit) => registerArea(actor, objectOf(edited({}, edit))),
  pathOf: async (_actor, id) => `/areas/${id}`,
};

/** Enters an area, or saves what was changed of one. */
export async function saveArea(before: RecordState, form: FormData): Promise<RecordState> {
  return saveRecord(KIND, before, form);
}
