'use server';

import { revalidatePath } from 'next/cache';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { NotAllowed } from '@/lib/auth/may';
import { returnPath } from '@/lib/auth/return-path';
import { undoChange } from '@/lib/register/commands/undo-change';
import { isId } from '@/lib/register/is-id';
import { whoMay } from '../who-is-here';

const SAID = {
  saved: 'done',
  'changed-since': 'since',
  refused: 'refused',
  stale: 'since',
  unknown: 'unknown',
  role: 'role',
} as const;

/** Takes a change back and goes to where it was asked for, which says what came of it. */
export async function undoHere(form: FormData): Promise<void> {
  const from = pathOf((await headers()).get('referer'));
  const outcome = await undone(from, String(form.get('change') ?? ''));
  revalidatePath('/', 'layout');
  redirect(`${from}?undone=${SAID[outcome]}`);
}

async function undone(from: string, change: string): Promise<keyof typeof SAID> {
  try {
    const actor = await whoMay('set.edit', from);
    return isId(change) ? (await undoChange(actor, change)).outcome : 'unknown';
  } catch (error) {
    if (error instanceof NotAllowed) return 'role';
    throw error;
  }
}

/** The page that the form stood on, without its question; only a path of this site. */
function pathOf(referer: string | null): string {
  if (referer === null || !URL.canParse(referer)) return '/';
  return returnPath(new URL(referer).pathname);
}
