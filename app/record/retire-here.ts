'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { changeThings } from '@/lib/register/commands/change-things';
import { THINGS } from '@/lib/register/things/thing';
import { refusedByRole } from '../refused-by-role';
import { SIGNED_OUT } from '../signed-out';
import { whoDoes } from '../who-is-here';

/** Retires a record, and goes to where the form says; refused, it says why. A motor is scrapped with it. */
export async function retireHere(_before: string | null, form: FormData): Promise<string | null> {
  const text = (name: string) => String(form.get(name) ?? '');
  const thing = THINGS.find((name) => name === text('thing'));
  const version = Number(text('version'));
  if (thing === undefined || !Number.isSafeInteger(version)) return 'The form is not complete: load the page anew.';
  const retiredAt = new Date().toISOString();
  const edit = thing === 'motor' ? { retiredAt, place: 'scrapped', setId: null, shelfId: null } : { retiredAt };
  let path: string;
  try {
    const actor = await whoDoes(thing === 'motor' ? 'motor.edit' : 'set.edit');
    if (actor === null) return SIGNED_OUT;
    const done = await changeThings(actor, [{ thing, id: text('record'), version, edit }]);
    switch (done.outcome) {
      case 'refused':
        return `It ${done.problems.map(({ says }) => says).join('; ')}.`;
      case 'stale':
        return 'Somebody else has changed it in between: load the page anew.';
      case 'same':
        path = returnPath(text('path'));
        break;
      case 'saved':
        path = `${returnPath(text('path'))}?changed=${done.changeId}`;
    }
  } catch (error) {
    if (isDatabaseGone(error)) return 'The register’s database does not answer. Nothing was changed.';
    const says = refusedByRole(error);
    if (says === null) throw error;
    return says;
  }
  revalidatePath('/', 'layout');
  redirect(path);
}
