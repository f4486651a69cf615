'use server';

import { redirect } from 'next/navigation';
import { severalLines } from '@/app/form-text';
import { oneLine, setPath } from '@/app/paths';
import { whoIsHere } from '@/app/who-is-here';
import { reportFault } from '@/lib/register/commands/report-fault';
import { setByTag } from '@/lib/register/queries/set-by-tag';

/** Notes the fault told on the set's page and goes back to it. */
export async function reportFaultHere(form: FormData): Promise<void> {
  const tag = oneLine(textOf(form, 'tag'));
  const actor = await whoIsHere(setPath(tag));
  const known = await setByTag(actor, tag);
  if (known === null) redirect(setPath(tag));
  const done = await reportFault(actor, known.row.id, severalLines(textOf(form, 'says')));
  redirect(done.outcome === 'saved' ? setPath(known.row.tag) : `${setPath(known.row.tag)}?fault=refused#fault`);
}

const textOf = (form: FormData, name: string) => {
  const value = form.get(name);
  return typeof value === 'string' ? value : '';
};
