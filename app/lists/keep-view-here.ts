'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { dropView, keepView } from '@/lib/register/commands/keep-view';
import { isId } from '@/lib/register/is-id';
import { whoMay } from '../who-is-here';
import { LIST_NAMES, type ListPath } from './asked-for';

/** Keeps the question that the list shows, or drops a kept one, and goes back to the list. */
export async function keepViewHere(form: FormData): Promise<void> {
  const text = (name: string) => String(form.get(name) ?? '');
  const page = (Object.keys(LIST_NAMES) as ListPath[]).find((path) => path === text('page')) ?? '/sets';
  const actor = await whoMay('register.read', page);
  const query = text('query').startsWith('?') ? text('query') : '';
  const drop = text('drop');
  if (isId(drop)) await dropView(actor, drop);
  else await keepView(actor, { page, name: text('name'), query });
  revalidatePath(page);
  redirect(`${page}${query}`);
}
