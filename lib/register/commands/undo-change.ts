import { randomUUID } from 'node:crypto';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { at, type Edit, isSame, type Leaf } from '@/lib/fields/state';
import { ALL_THINGS } from '../things/all-things';
import { THINGS, type ThingName } from '../things/thing';
import { type Change, changeStep, NotMade, type NotMadeOutcome } from './change-step';
import { MOST_AT_ONCE, parts } from './parts';
import { retireMade } from './retire-made';

export type UndoOutcome =
  /** The undo is a change as well: `changeId` undoes it in its turn. */
  | { outcome: 'saved'; changeId: string; things: number }
  /** Fields that were changed since: each with what the change left and what stands now. */
  | {
      outcome: 'changed-since';
      fields: { thing: ThingName; id: string; path: string; left: Leaf | null; now: Leaf | null }[];
    }
  | { outcome: 'unknown' }
  | NotMadeOutcome;

/**
 * Takes a change back whole: what was made is retired, what was changed gets its old values. Refused when anything of it
 * was changed since.
 */
export async function undoChange(actor: Actor, changeId: string): Promise<UndoOutcome> {
  must(actor, 'set.edit');
  must(actor, 'motor.edit');
  const undoId = randomUUID();
  try {
    return await db.$transaction(
      async (tx) => {
        const done = await undoStep(tx, { ...actor, changeId: undoId }, changeId);
        return typeof done === 'number' ? { outcome: 'saved', changeId: undoId, things: done } : done;
      },
      { timeout: MOST_AT_ONCE },
    );
  } catch (error) {
    if (error instanceof NotMade) return error.why;
    throw error;
  }
}

/** The step of it: how many records were put back, or why none was. Throws NotMade. */
export async function undoStep(
  tx: Tx,
  by: Actor & { changeId: string },
  changeId: string,
): Promise<number | UndoOutcome> {
  const entries = await tx.auditEntry.findMany({
    where: { siteId: by.siteId, changeId },
    orderBy: { at: 'asc' },
    select: { thing: true, thingId: true, action: true, before: true, after: true },
  });
  const undone = entries.flatMap(({ thing, thingId, action, before, after }) => {
    const known = THINGS.find((name) => name === thing);
    if (known === undefined || thingId === null) return [];
    return [
      {
        thing: known,
        id: thingId,
        isMade: action.endsWith('.register'),
        before: (before ?? {}) as Edit,
        after: (after ?? {}) as Edit,
      },
    ];
  });
  if (undone.length === 0) return { outcome: 'unknown' };
  const fields = [];
  for (const thing of THINGS) {
    const those = undone.filter((one) => one.thing === thing);
    if (those.length === 0) continue;
    for (const part of parts(those)) {
      const standing = await ALL_THINGS[thing].locked(tx, by.siteId, [...new Set(part.map(({ id }) => id))]);
      for (const { id, after } of part)
        for (const path of Object.keys(after)) {
          const now = at(standing.get(id)?.state ?? {}, path);
          if (!isSame(now, at(after, path))) fields.push({ thing, id, path, left: at(after, path), now });
        }
    }
  }
  if (fields.length > 0) return { outcome: 'changed-since', fields };
  const made = undone.filter(({ isMade }) => isMade);
  const changes = undone.flatMap(({ thing, id, isMade, before }): Change[] =>
    isMade ? [] : [{ thing, id, version: null, edit: before }],
  );
  // Made motors leave their sets before anything returns; made places go when nothing stands in them any more.
  const isMotor = ({ thing }: { thing: ThingName }) => thing === 'motor';
  let stuck = await retireMade(tx, by, made.filter(isMotor));
  const changed = await changeStep(tx, by, changes, 'undone');
  if (stuck.length === 0)
    stuck = await retireMade(
      tx,
      by,
      made.filter((one) => !isMotor(one)),
    );
  if (stuck.length > 0) throw new NotMade({ outcome: 'refused', problems: stuck });
  return made.length + changed.size;
}
