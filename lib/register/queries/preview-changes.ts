import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { difference, type Edit, edited, objectOf, stateOf } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';
import { ALL_THINGS } from '../things/all-things';
import { MOST_CHOSEN } from './chosen-ids';

export interface Preview {
  id: string;
  /** Its tag or plant number. */
  name: string;
  version: number;
  /** From what to what; null: nothing changes. */
  change: { before: Edit; after: Edit } | null;
  /** Why it could not stand so. */
  problems: Problem[];
}

/** What an edit would change of each of these records, and what of them could not stand so. Nothing is written. */
export async function previewChanges(
  actor: Actor,
  thing: 'set' | 'motor',
  ids: readonly string[],
  edit: Edit,
): Promise<Preview[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const some = ids.slice(0, MOST_CHOSEN);
  const standing = await ALL_THINGS[thing].standing(db, siteId, some);
  const previews: Preview[] = [];
  for (const id of some) {
    const stands = standing.get(id);
    if (stands === undefined) continue;
    const state = stateOf(objectOf(edited(stands.state, edit)));
    const change = difference(stands.state, state);
    const problems = change === null ? [] : await ALL_THINGS[thing].problems(db, siteId, id, state);
    previews.push({
      id,
      name: String(stands.state[thing === 'set' ? 'tag' : 'id']),
      version: stands.version,
      change,
      problems,
    });
  }
  return previews;
}
