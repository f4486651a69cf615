'use server';

import { NAME_FIELD } from '@/lib/fields/place-fields';
import { registerShelf, registerStore } from '@/lib/register/commands/register-place';
import type { RecordState } from '../../record/record-state';
import { type RecordKind, saveRecord } from '../../record/save-record';

const BOTH = {
  may: 'set.edit',
  fields: [NAME_FIELD],
  hasRatings: false,
  shown: () => ({}),
  edit: async () => ({ edit: {}, problems: [] }),
  inputOf: (path: string) => path,
  pathOf: async () => '/stores/places',
} as const;

/** Enters a store, or saves its name. */
export async function saveStore(before: RecordState, form: FormData): Promise<RecordState> {
  const kind: RecordKind = {
    ...BOTH,
    thing: 'store',
    more: [],
    make: (actor, { name }) => registerStore(actor, String(name ?? '')),
  };
  return saveRecord(kind, before, form);
}

/** Enters a shelf in the store that the form names, or saves its name. */
export async function saveShelf(before: RecordState, form: FormData): Promise<RecordState> {
  const store = String(form.get('store') ?? '');
  const kind: RecordKind = {
    ...BOTH,
    thing: 'shelf',
    more: [],
    make: (actor, { name }) => registerShelf(actor, store, String(name ?? '')),
  };
  return saveRecord(kind, before, form);
}
