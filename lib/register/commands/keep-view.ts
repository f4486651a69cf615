import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';

/** As many views as one person keeps. */
const MOST = 50;

export type ViewOutcome = { outcome: 'saved' } | { outcome: 'refused'; problems: Problem[] };

/** Keeps a list's question under a name of the person's own; the same name again is the new question. */
export async function keepView(
  actor: Actor,
  view: { page: string; name: string; query: string },
): Promise<ViewOutcome> {
  must(actor, 'register.read');
  const { siteId, userId } = actor;
  const { page, query } = view;
  const name = view.name.trim();
  const refused = (path: string, says: string): ViewOutcome => ({
    outcome: 'refused',
    problems: [{ path, value: name.slice(0, 80), says }],
  });
  if (name === '' || name.length > 60 || /[\p{Cc}\p{Cs}]/u.test(name))
    return refused('name', 'must have 1 to 60 characters');
  if (query.length > 1_000) return refused('query', 'is too long to be kept');
  const others = await db.savedView.count({ where: { siteId, userId, NOT: { page, name } } });
  if (others >= MOST) return refused('name', `is one too many: ${MOST} views can be kept, drop another first`);
  await db.savedView.upsert({
    where: { siteId_userId_page_name: { siteId, userId, page, name } },
    create: { siteId, userId, page, name, query },
    update: { query },
  });
  return { outcome: 'saved' };
}

/** Drops a view of one's own. */
export async function dropView(actor: Actor, id: string): Promise<void> {
  must(actor, 'register.read');
  const { siteId, userId } = actor;
  await db.savedView.deleteMany({ where: { siteId, userId, id } });
}
