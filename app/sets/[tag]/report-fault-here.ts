'use server';

import { redirect } from 'next/navigation';
import { severalLines } from '@/app/form-text';
import { oneLine, setPath } from '@/app/paths';
import { refusedByRole } from '@/app/refused-by-role';
import { SIGNED_OUT } from '@/app/signed-out';
import { whoDoes } from '@/app/who-is-here';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { reportFault } from '@/lib/register/commands/report-fault';
import { setByTag } from '@/lib/register/queries/set-by-tag';

/** What was typed when the form was sent last, and why it was not taken; null before the first sending. */
export interface FaultState {
  says: string;
  problem: string | null;
}

/** Notes the fault told on the set's page and goes back to it. Refused, it keeps what was typed. */
export async function reportFaultHere(_before: FaultState, form: FormData): Promise<FaultState> {
  const tag = oneLine(textOf(form, 'tag'));
  const says = severalLines(textOf(form, 'says'));
  let path: string;
  try {
    const actor = await whoDoes('fault.report');
    if (actor === null) return { says, problem: SIGNED_OUT };
    const known = await setByTag(actor, tag);
    if (known === null) return { says, problem: 'The set is not in the register of this site.' };
    const done = await reportFault(actor, known.row.id, says);
    if (done.outcome === 'refused')
      return { says, problem: 'Say in a few words what is wrong: 1 to 2,000 characters.' };
    path = setPath(known.row.tag);
  } catch (error) {
    if (isDatabaseGone(error))
      return {
        says,
        problem: 'The register’s database does not answer. Nothing was noted; send it again in a minute.',
      };
    const problem = refusedByRole(error);
    if (problem === null) throw error;
    return { says, problem };
  }
  redirect(path);
}

const textOf = (form: FormData, name: string) => {
  const value = form.get(name);
  return typeof value === 'string' ? value : '';
};
