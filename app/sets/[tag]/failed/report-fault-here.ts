'use server';

import { createHash } from 'node:crypto';
import { redirect } from 'next/navigation';
import { severalLines } from '@/app/form-text';
import { candidatesPath, oneLine } from '@/app/paths';
import { pictureWith } from '@/app/pictures/picture-with';
import { refusedByRole } from '@/app/refused-by-role';
import { SIGNED_OUT } from '@/app/signed-out';
import { whoDoes } from '@/app/who-is-here';
import type { Actor } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { SEEN } from '@/lib/plant/fault';
import { reportFault } from '@/lib/register/commands/report-fault';
import { isId } from '@/lib/register/is-id';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import type { FaultState } from './fault-state';

/** Notes the fault, keeps its photograph, and leads to what can go in. Refused, it keeps what was told. */
export async function reportFaultHere(_before: FaultState, form: FormData): Promise<FaultState> {
  const seen = form.getAll('seen').map(String);
  const says = severalLines(textOf(form, 'says'));
  const not = (problem: string): FaultState => ({ seen, says, problem });
  let path: string;
  try {
    const actor = await whoDoes('fault.report');
    if (actor === null) return not(SIGNED_OUT);
    const done = await report(actor, form, seen, says.trim());
    if ('problem' in done) return not(done.problem);
    path = done.path;
  } catch (error) {
    if (isDatabaseGone(error))
      return not('The register’s database does not answer. Nothing was noted; send it again in a minute.');
    const problem = refusedByRole(error);
    if (problem === null) throw error;
    return not(problem);
  }
  redirect(path);
}

async function report(actor: Actor, form: FormData, seen: string[], says: string) {
  const known = await setByTag(actor, oneLine(textOf(form, 'tag')));
  if (known === null) return { problem: 'The set is not in the register of this site.' };
  const done = await reportFault(actor, {
    key: keyOf(textOf(form, 'key'), seen, says),
    setId: known.row.id,
    seen: SEEN.filter((one) => seen.includes(one)),
    says: says === '' ? null : says,
  });
  if (done.outcome === 'refused')
    return { problem: 'Tell what was seen, or say in a few words what is wrong: 1 to 2,000 characters.' };
  // The fault is noted first: what becomes of its picture takes nothing back.
  const picture = await pictureWith(actor, { thing: 'fault', id: done.faultId }, form, null).catch(() => 'failed');
  const told = new URLSearchParams({ fault: done.faultId, ...(picture !== null && { picture }) });
  return { path: `${candidatesPath(known.row.tag)}?${told}` };
}

/**
 * The key of the page and what was told make one key: a second touch of the same choice is the same fault, and another
 * choice after the browser's way back is another. Null: the page had no key.
 */
function keyOf(pageKey: string, seen: readonly string[], says: string): string | null {
  if (!isId(pageKey)) return null;
  const sum = createHash('sha256')
    .update(JSON.stringify([pageKey, seen, says]))
    .digest('hex');
  return `${sum.slice(0, 8)}-${sum.slice(8, 12)}-4${sum.slice(13, 16)}-8${sum.slice(17, 20)}-${sum.slice(20, 32)}`;
}

const textOf = (form: FormData, name: string) => {
  const value = form.get(name);
  return typeof value === 'string' ? value : '';
};
