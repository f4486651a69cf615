import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { type SiteSettings, siteSettings as schema } from '@/lib/plant/site-settings';

export type SettingsOutcome =
  | { outcome: 'saved'; version: number }
  /** Somebody saved in between: what stands now, and under which version. */
  | { outcome: 'stale'; settings: SiteSettings; version: number };

/** Puts what the site decides for itself, if nobody has changed it since `version` was read. */
export async function changeSiteSettings(
  actor: Actor,
  version: number,
  settings: SiteSettings,
): Promise<SettingsOutcome> {
  must(actor, 'settings.edit');
  const next = schema.parse(settings);
  const { siteId: id } = actor;
  return db.$transaction(async (tx) => {
    const before = await tx.site.findUniqueOrThrow({ where: { id }, select: { settings: true, version: true } });
    const stood = schema.parse(before.settings);
    const done = await tx.site.updateMany({
      where: { id, version },
      data: { settings: next, version: { increment: 1 }, changedAt: new Date() },
    });
    if (done.count === 0) return { outcome: 'stale', settings: stood, version: before.version };
    const changes = changed(stood, next);
    if (changes.length > 0)
      await record(tx, actor, {
        action: 'settings.edit',
        thing: 'site',
        thingId: id,
        before: Object.fromEntries(changes.map(([key, was]) => [key, was])),
        after: Object.fromEntries(changes.map(([key, , is]) => [key, is])),
      });
    return { outcome: 'saved', version: version + 1 };
  });
}

/** The settings that differ, each with what it was and what it is; an hour of work by its own name. */
function changed(
  was: SiteSettings,
  is: SiteSettings,
): [string, Prisma.InputJsonValue | null, Prisma.InputJsonValue | null][] {
  const [before, after] = [flat(was), flat(is)];
  return Object.keys(after).flatMap((key) => {
    const [b, a] = [before[key] ?? null, after[key] ?? null];
    return b === a ? [] : [[key, b, a] as [string, string | number | null, string | number | null]];
  });
}

const flat = ({ hours, downtimePerHour, ...rest }: SiteSettings): Record<string, string | number | null> => ({
  ...named('hours', hours),
  ...named('downtimePerHour', downtimePerHour),
  ...rest,
});

const named = (group: string, figures: Readonly<Record<string, number | null>>) =>
  Object.fromEntries(Object.entries(figures).map(([key, value]) => [`${group}.${key}`, value]));
