import { type Actor, must } from '@/lib/auth/may';
import type { State } from '@/lib/fields/state';
import { namesOf } from '../names-of';
import { recordNow } from './record-now';
import { type RecordOn, recordOn } from './record-on';

export interface RecordThen {
  on: Exclude<RecordOn, { outcome: 'unknown' }>;
  now: State;
  nameOf: (path: string, id: string) => string | null;
}

/** A set or a motor as it stood at a moment, as it stands, and what the ids in it are called; null: the site has none such. */
export async function recordThen(
  actor: Actor,
  thing: 'set' | 'motor',
  id: string,
  moment: Date,
): Promise<RecordThen | null> {
  must(actor, 'register.read');
  const [now, on] = await Promise.all([recordNow(actor, thing, id), recordOn(actor, thing, id, moment)]);
  if (now === null || on.outcome === 'unknown') return null;
  const before = on.outcome === 'stood' ? on.state : {};
  const { nameOf } = await namesOf(actor.siteId, [{ thing, thingId: id, before, after: now.state }]);
  return { on, now: now.state, nameOf };
}
