import { THINGS } from './things/thing';

/** Whether an entry of the audit is one that an undo takes back: a record made or changed under a change of its own. */
export function isChangeOfRecord({
  thing,
  action,
  changeId,
}: {
  thing: string;
  action: string;
  changeId: string | null;
}) {
  return changeId !== null && THINGS.some((name) => name === thing) && /\.(register|change)$/.test(action);
}
