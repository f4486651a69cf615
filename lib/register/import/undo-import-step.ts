import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Leaf } from '@/lib/fields/state';
import { NotMade } from '../commands/change-step';
import { undoStep } from '../commands/undo-change';
import { isStill, type RunKey, toStatus } from './run-state';

/** Ten thousand records are put back in one transaction, so that never half of them are. */
const MOST_MS = 600_000;

/** Takes an import back whole; or tells why not, and then all of it stays. */
export async function undoImportStep(key: RunKey, by: Actor & { changeId: string }, changeId: string): Promise<void> {
  try {
    await db.$transaction(
      async (tx) => {
        if (!(await isStill(tx, key, 'undoing'))) return;
        const done = await undoStep(tx, by, changeId);
        if (typeof done !== 'number' && done.outcome !== 'unknown') throw new NotUndone(done);
        await toStatus(tx, key, 'undoing', { status: 'undone', says: null });
      },
      { timeout: MOST_MS },
    );
  } catch (error) {
    const says = error instanceof NotUndone || error instanceof NotMade ? sentence(error.why) : null;
    if (says === null) throw error;
    await toStatus(db, key, 'undoing', { status: 'applied', says });
  }
}

type Why = Exclude<Awaited<ReturnType<typeof undoStep>>, number>;

class NotUndone extends Error {
  override name = 'NotUndone';
  constructor(readonly why: Why) {
    super(`not undone: ${why.outcome}`);
  }
}

function sentence(why: Why): string {
  switch (why.outcome) {
    case 'changed-since': {
      const records = new Set(why.fields.map(({ id }) => id)).size;
      const [first] = why.fields;
      const field =
        first === undefined
          ? ''
          : ` (${first.thing}, ${first.path}: ${shown(first.left)} was imported, ${shown(first.now)} stands now)`;
      return `It was not undone: ${records === 1 ? 'one record was' : `${records} records were`} changed since${field}. Nothing was put back.`;
    }
    case 'refused': {
      const [first] = why.problems;
      return `It was not undone: ${first === undefined ? '' : `${first.thing}: ${first.path} ${first.says}. `}Nothing was put back.`;
    }
    case 'stale':
    case 'saved':
    case 'unknown':
      return 'It was not undone: somebody changed one of its records at the same moment. Try again.';
  }
}

const shown = (value: Leaf | null) => (value === null ? 'nothing' : String(value));
