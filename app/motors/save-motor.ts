'use server';

import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { edited } from '@/lib/fields/state';
import { registerMotors } from '@/lib/register/commands/register-motors';
import { motorNumber } from '@/lib/register/queries/motor-number';
import { motorPartsOf } from '@/lib/register/things/motor-thing';
import { motorPath } from '../paths';
import { pictureWith } from '../pictures/picture-with';
import type { RecordState } from '../record/record-state';
import { type RecordKind, saveRecord } from '../record/save-record';
import { motorInputOf } from './motor-input-of';
import { WHERE_INPUTS } from './motor-place-words';
import { whereOf, whereTyped } from './motor-places';

const KIND: RecordKind = {
  thing: 'motor',
  may: 'motor.edit',
  fields: MOTOR_FIELDS,
  hasRatings: true,
  more: WHERE_INPUTS,
  shown: (state) => whereOf(state, null),
  edit: (actor, _state, typed) => whereTyped(actor, typed),
  inputOf: motorInputOf,
  make: async (actor, edit) => {
    const { input, at, about } = motorPartsOf(edited({}, edit));
    const done = await registerMotors(actor, [{ motor: input, at, ...about }]);
    if (done.outcome === 'refused') return done;
    const [id] = done.ids.values();
    if (id === undefined) throw new Error('A motor was saved without an id.');
    return { outcome: 'saved', changeId: done.changeId, id };
  },
  keepPicture: (actor, id, form) => pictureWith(actor, { thing: 'motor', id }, form, 'Plate'),
  pathOf: async (actor, id) => motorPath((await motorNumber(actor, id)) ?? ''),
};

/** Enters a motor, or saves what was changed of one. */
export async function saveMotor(before: RecordState, form: FormData): Promise<RecordState> {
  return saveRecord(KIND, before, form);
}
