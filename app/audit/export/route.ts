import { askedBy } from '@/app/api/v1/asked-by';
import { fileAnswer } from '@/app/file-answer';
import type { Actor } from '@/lib/auth/may';
import type { Units } from '@/lib/fields/field';
import { toldChanges } from '@/lib/fields/told-changes';
import { exportAudit } from '@/lib/register/commands/export-audit';
import type { TrailFilter } from '@/lib/register/queries/audit-trail';
import { ownUnits } from '@/lib/register/queries/own-units';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { actionWords, THING_WORDS } from '../action-words';
import { trailAsked } from '../trail-asked';

/** The audit as it is asked for, one changed field a row. */
export async function GET(request: Request): Promise<Response> {
  return askedBy(request, 'audit.read', async (actor) => {
    const query = Object.fromEntries(new URL(request.url).searchParams);
    const [{ timezone }, units] = await Promise.all([siteSettings(actor), ownUnits(actor)]);
    return fileAnswer('audit', 'csv', rowsOf(actor, trailAsked(query, timezone), units));
  });
}

const HEAD = ['When (UTC)', 'Who', 'What', 'Which', 'Done', 'Field', 'From', 'To', 'Note', 'Change'];

async function* rowsOf(actor: Actor, filter: TrailFilter, units: Units): AsyncGenerator<(string | null)[]> {
  yield HEAD;
  for await (const { entries, nameOf } of exportAudit(actor, filter))
    for (const { at, by, action, thing, before, after, note, changeId } of entries) {
      const what = [at.toISOString(), by?.name ?? 'Bedplate', THING_WORDS[thing.thing] ?? thing.thing, thing.name];
      const changes = toldChanges(thing.thing, before, after, units, nameOf);
      const told = changes.length === 0 ? [{ label: null, from: null, to: null }] : changes;
      for (const { label, from, to } of told) yield [...what, actionWords(action), label, from, to, note, changeId];
    }
}
