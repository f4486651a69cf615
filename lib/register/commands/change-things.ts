import { randomUUID } from 'node:crypto';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { triedAgain } from '@/lib/db/tried-again';
import { type Change, changeStep, NotMade, type NotMadeOutcome } from './change-step';
import { MOST_AT_ONCE } from './parts';

export type ChangeOutcome =
  /** `changeId` undoes it whole; `versions` by the record's id. */
  | { outcome: 'saved'; changeId: string; versions: Map<string, number> }
  /** Everything stands so already. */
  | { outcome: 'same' }
  | NotMadeOutcome;

/** Changes records of the site, all or none, each if nobody has changed it since its version was read. */
export async function changeThings(
  actor: Actor,
  changes: readonly Change[],
  note: string | null = null,
): Promise<ChangeOutcome> {
  must(actor, 'set.edit');
  must(actor, 'motor.edit');
  const changeId = randomUUID();
  try {
    const versions = await triedAgain(() =>
      db.$transaction((tx) => changeStep(tx, { ...actor, changeId }, changes, note), { timeout: MOST_AT_ONCE }),
    );
    return versions.size === 0 ? { outcome: 'same' } : { outcome: 'saved', changeId, versions };
  } catch (error) {
    if (error instanceof NotMade) return error.why;
    throw error;
  }
}
