'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { type Actor, NotAllowed } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import {
  applyImport,
  cancelImport,
  readAnew,
  resumeImport,
  type SteeredImport,
  undoImport,
} from '@/lib/register/commands/steer-import';
import { isId } from '@/lib/register/is-id';
import { DELIMITERS, ENCODINGS } from '@/lib/sheet/dialect';
import { whoMay } from '../../who-is-here';

const STEPS = { apply: applyImport, cancel: cancelImport, resume: resumeImport, undo: undoImport } as const;

/** Gives an import a person's word, and goes to its page, which says what came of it. */
export async function steerHere(form: FormData): Promise<void> {
  const step = String(form.get('step') ?? '');
  await given(form, async (actor, runId) =>
    Object.hasOwn(STEPS, step) ? STEPS[step as keyof typeof STEPS](actor, runId) : 'unknown',
  );
}

/** Has the file read again as a person says it is written. */
export async function readAnewHere(form: FormData): Promise<void> {
  const text = (name: string) => String(form.get(name) ?? '');
  const decimal = text('decimal');
  await given(form, (actor, runId) =>
    readAnew(actor, runId, {
      encoding: ENCODINGS.find((one) => one === text('encoding')) ?? null,
      delimiter: DELIMITERS.find((one) => one === text('delimiter')) ?? null,
      decimal: decimal === '.' || decimal === ',' ? decimal : null,
      sheet: text('sheet') || null,
    }),
  );
}

async function given(form: FormData, give: (actor: Actor, runId: string) => Promise<SteeredImport>): Promise<void> {
  const runId = String(form.get('run') ?? '');
  const path = isId(runId) ? `/imports/${runId}` : '/imports';
  let done: SteeredImport | 'away' | 'role';
  try {
    done = await give(await whoMay('import.run', path), runId);
  } catch (error) {
    if (error instanceof NotAllowed) done = 'role';
    else if (isDatabaseGone(error)) done = 'away';
    else throw error;
  }
  revalidatePath('/', 'layout');
  redirect(done === 'done' ? path : `${path}?said=${done}`);
}
