'use server';

import { SET_FIELDS } from '@/lib/fields/set-fields';
import { edited } from '@/lib/fields/state';
import { registerSets } from '@/lib/register/commands/register-sets';
import { setTag } from '@/lib/register/queries/set-tag';
import { setPartsOf } from '@/lib/register/things/set-thing';
import { setPath } from '../paths';
import type { RecordState } from '../record/record-state';
import { type RecordKind, saveRecord } from '../record/save-record';

const KIND: RecordKind = {
  thing: 'set',
  may: 'set.edit',
  fields: SET_FIELDS,
  hasRatings: false,
  more: ['areaId'],
  shown: ({ areaId }) => ({ areaId: areaId === undefined ? '' : String(areaId) }),
  edit: async (_actor, _state, { areaId = '' }) => ({ edit: { areaId: areaId === '' ? null : areaId }, problems: [] }),
  inputOf: (path) => (path === 'supply.drive' ? 'supply.drive.ratedA' : path),
  make: async (actor, edit) => {
    const { input, about } = setPartsOf(edited({}, edit));
    const done = await registerSets(actor, [{ set: input, ...about }]);
    if (done.outcome === 'refused') return done;
    const [id] = done.ids.values();
    if (id === undefined) throw new Error('A set was saved without an id.');
    return { outcome: 'saved', changeId: done.changeId, id };
  },
  pathOf: async (actor, id) => setPath((await setTag(actor, id)) ?? ''),
};

/** Enters a set, or saves what was changed of one. */
export async function saveSet(before: RecordState, form: FormData): Promise<RecordState> {
  return saveRecord(KIND, before, form);
}
