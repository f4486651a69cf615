'use server';

import { revalidatePath } from 'next/cache';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { undoChange } from '@/lib/register/commands/undo-change';
import { whoIsHere } from '../who-is-here';

const SAID = {
  saved: 'done',
  'changed-since': 'since',
  refused: 'refused',
  stale: 'since',
  unknown: 'unknown',
} as const;

/** Takes a change back and goes to where it was asked for, which says what came of it. */
export async function undoHere(form: FormData): Promise<void> {
  const from = pathOf((await headers()).get('referer'));
  const actor = await whoIsHere(from);
  const change = String(form.get('change') ?? '');
  const done = /^[0-9a-f-]{36}$/.test(change) ? await undoChange(actor, change) : ({ outcome: 'unknown' } as const);
  revalidatePath('/', 'layout');
  redirect(`${from}?undone=${SAID[done.outcome]}`);
}

/** The page that the form stood on, without its question; only a path of this site. */
function pathOf(referer: string | null): string {
  if (referer === null || !URL.canParse(referer)) return '/';
  return returnPath(new URL(referer).pathname);
}
