import type { Actor } from '@/lib/auth/may';
import type { Pack, PackMotor, PackSet } from '@/lib/offline/pack';
import { packSince } from '@/lib/register/queries/pack';

/** What a phone has of its site. */
export interface Kept {
  cursor: string;
  sets: Map<string, PackSet>;
  motors: Map<string, PackMotor>;
  shelves: Pack['shelves'];
  site: Pack['site'];
}

/** Asks for a pack as a phone does, page after page; `between` happens after every page. */
export async function fetched(
  actor: Actor,
  kept: Kept | null,
  { perPage = 1_000, between = async () => {} }: { perPage?: number; between?: () => Promise<void> } = {},
): Promise<{ kept: Kept; pages: Pack[] }> {
  const pages: Pack[] = [];
  for (let page: string | null = null; ; ) {
    const answer = await packSince(actor, { since: kept?.cursor ?? null, page }, perPage);
    if (answer === null) throw new Error('begin again');
    pages.push(answer);
    await between();
    if (answer.next === null) break;
    page = answer.next;
  }
  const [first, last] = [pages[0], pages.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no page');
  const old = first.isWhole ? null : kept;
  return {
    pages,
    kept: {
      cursor: last.cursor,
      sets: new Map([...(old?.sets ?? []), ...pages.flatMap(({ sets }) => sets.map((one) => [one.id, one] as const))]),
      motors: new Map([
        ...(old?.motors ?? []),
        ...pages.flatMap(({ motors }) => motors.map((one) => [one.id, one] as const)),
      ]),
      shelves: last.shelves,
      site: last.site,
    },
  };
}

/** What a phone shows, whatever way it came by it. */
export const shown = ({ sets, motors, shelves, site }: Kept) => ({
  sets: [...sets.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
  motors: [...motors.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
  shelves,
  site,
});
