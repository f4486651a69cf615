'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { type ConfirmedColumns, confirmImport } from '@/lib/register/commands/confirm-import';
import { refusedByRole } from '../../refused-by-role';
import { SIGNED_OUT } from '../../signed-out';
import { whoDoes } from '../../who-is-here';
import { SAID_WORDS } from '../import-words';

/** What a person said of the columns, and what is wrong with it. Null: not sent yet. */
export interface ColumnsState {
  says: string[];
  typed: Record<string, string>;
}

const HELD = ['foot', 'face', 'foot-and-face'] as const;

/** Takes a person's word on the columns and has every row looked at. */
export async function confirmHere(_before: ColumnsState | null, form: FormData): Promise<ColumnsState | null> {
  const typed = Object.fromEntries(
    [...form].flatMap(([name, value]) =>
      typeof value === 'string' && !name.startsWith('$') ? [[name, value.slice(0, 200)]] : [],
    ),
  );
  const wrong = (...says: string[]): ColumnsState => ({ says, typed });
  const runId = typed.run ?? '';
  try {
    const actor = await whoDoes('import.run');
    if (actor === null) return wrong(SIGNED_OUT);
    const done = await confirmImport(actor, runId, toldBy(typed));
    if (done.outcome === 'refused') return wrong(...done.says);
    if (done.outcome !== 'saved') return wrong(SAID_WORDS[done.outcome]);
  } catch (error) {
    if (isDatabaseGone(error)) return wrong(SAID_WORDS.away);
    const says = refusedByRole(error);
    if (says === null) throw error;
    return wrong(says);
  }
  revalidatePath('/', 'layout');
  redirect(`/imports/${runId}`);
}

function toldBy(typed: Record<string, string>): ConfirmedColumns {
  const text = (name: string): string | null => typed[name]?.trim() || null;
  const columns = Object.entries(typed).flatMap(([name, field]) => {
    const index = /^column-(\d{1,3})$/.exec(name)?.[1];
    if (index === undefined) return [];
    return [{ index: Number(index), field: field === '' ? null : field, unit: text(`unit-${index}`) }];
  });
  return {
    columns,
    options: {
      mounting: HELD.find((one) => one === typed.mounting) ?? null,
      area: text('area'),
      store: text('store'),
      keepUnknownWords: typed.keepUnknownWords === 'yes',
    },
    makePlaces: typed.makePlaces === 'yes',
  };
}
