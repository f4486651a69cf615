'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { type Edit, isLeaf, type Leaf } from '@/lib/fields/state';
import { changeThings } from '@/lib/register/commands/change-things';
import { refusedByRole } from '../refused-by-role';
import { SIGNED_OUT } from '../signed-out';
import { whoDoes } from '../who-is-here';

/** Makes the change that was shown, to the records and versions that were shown, all or none. */
export async function changeManyHere(_before: string | null, form: FormData): Promise<string | null> {
  const meant = meantBy(form);
  if (meant === null) return 'The form is not complete: load the page anew.';
  const { thing, edit, records } = meant;
  let path: string;
  try {
    const actor = await whoDoes(thing === 'motor' ? 'motor.edit' : 'set.edit');
    if (actor === null) return SIGNED_OUT;
    const done = await changeThings(
      actor,
      records.map(([id, version]) => ({ thing, id, version, edit })),
      'many at once',
    );
    const back = returnPath(String(form.get('path') ?? ''));
    const mark = back.includes('?') ? '&' : '?';
    switch (done.outcome) {
      case 'refused':
        return `Nothing was changed. ${done.problems
          .slice(0, 5)
          .map((problem) => `${problem.path} ${problem.says}`)
          .join('; ')}.`;
      case 'stale':
        return 'Nothing was changed: somebody else has changed one of them in between. Look at the preview again.';
      case 'same':
        path = back;
        break;
      case 'saved':
        path = `${back}${mark}changed=${done.changeId}`;
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

interface Meant {
  thing: 'set' | 'motor';
  edit: Edit;
  records: [id: string, version: number][];
}

function meantBy(form: FormData): Meant | null {
  try {
    const thing = form.get('thing');
    if (thing !== 'set' && thing !== 'motor') return null;
    const edit: unknown = JSON.parse(String(form.get('edit')));
    const records: unknown = JSON.parse(String(form.get('records')));
    if (typeof edit !== 'object' || edit === null || !Array.isArray(records) || records.length > 2_000) return null;
    const fields = Object.entries(edit).filter(
      (field): field is [string, Leaf | null] => field[1] === null || isLeaf(field[1]),
    );
    const told = records.filter(
      (one): one is [string, number] =>
        Array.isArray(one) && typeof one[0] === 'string' && Number.isSafeInteger(one[1]),
    );
    if (fields.length === 0 || told.length !== records.length) return null;
    return { thing, edit: Object.fromEntries(fields), records: told };
  } catch {
    return null;
  }
}
