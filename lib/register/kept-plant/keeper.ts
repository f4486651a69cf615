/** What is kept of one site, and whoever brings it up to date. */
interface Held<T> {
  value: T | null;
  running: Promise<T> | null;
  /** Those who came while it was running: what runs may have asked the database before their change. */
  next: Promise<T> | null;
  letGo: ReturnType<typeof setTimeout> | null;
}

/** A site that nobody asked about for so long is let go. */
const HELD_MS = 60 * 60 * 1_000;
/** So many sites are kept in a process, those asked last. */
const MOST_SITES = 12;

/**
 * Keeps one thing for each site, in this process. Whoever asks gets it as it stood when they asked or later: `brought`
 * makes it of what was kept before (null: nothing) and runs once at a time for a site; all who come meanwhile share the
 * next run. Where it throws, what was kept before stays.
 */
export function keeperOf<T>(brought: (siteId: string, before: T | null) => Promise<T>): (siteId: string) => Promise<T> {
  const sites = new Map<string, Held<T>>();
  const run = async (siteId: string, held: Held<T>): Promise<T> => {
    try {
      held.value = await brought(siteId, held.value);
      return held.value;
    } finally {
      held.running = null;
    }
  };
  const start = (siteId: string, held: Held<T>): Promise<T> => {
    held.running = run(siteId, held);
    return held.running;
  };
  return (siteId) => {
    const held: Held<T> = sites.get(siteId) ?? { value: null, running: null, next: null, letGo: null };
    sites.delete(siteId); // the order of the map is that of the last asking
    sites.set(siteId, held);
    if (held.letGo !== null) clearTimeout(held.letGo);
    held.letGo = setTimeout(() => sites.delete(siteId), HELD_MS);
    held.letGo.unref();
    for (const [oldest, { letGo }] of sites) {
      if (sites.size <= MOST_SITES) break;
      if (letGo !== null) clearTimeout(letGo);
      sites.delete(oldest);
    }
    if (held.running === null) return start(siteId, held);
    held.next ??= held.running
      .catch(() => null)
      .then(() => {
        held.next = null;
        return start(siteId, held);
      });
    return held.next;
  };
}
