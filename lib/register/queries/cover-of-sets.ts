import { type Actor, must } from '@/lib/auth/may';
import { type CoverState, isInState, type SetStanding, setStanding } from '@/lib/spares/cover/set-standing';
import { type CoverFilter, isAskedSet } from '../cover-filter';
import { coverOfSite } from '../kept-plant/cover-now';
import type { KeptSet } from '../kept-plant/kept-plant';

/** A set with what the shelves hold for it. */
export interface CoveredLine extends SetStanding {
  of: KeptSet;
}

/** How many sets of one criticality are in each state. */
export interface CriticalityCount {
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  sets: number;
  states: Record<CoverState, number>;
}

export interface CoverOfSets {
  lines: CoveredLine[];
  /** How many are asked for in all. */
  all: number;
  /** Over every set of the site, whatever is asked for. */
  counts: CriticalityCount[];
  /** Shelf motors that may be offered, and those whose winding reads too low. */
  motors: number;
  refused: string[];
}

/** For the sets asked which shelf motors would serve, counted by verdict. */
export async function coverOfSets(
  actor: Actor,
  filter: CoverFilter,
  { page, perPage }: { page: number; perPage: number },
): Promise<CoverOfSets> {
  must(actor, 'register.read');
  const { plant, cover } = await coverOfSite(actor.siteId);
  const every = [...plant.sets.values()].map((of): CoveredLine => {
    const row = cover.sets.get(of.setId);
    if (row === undefined) throw new Error(`the cover lacks ${of.tag}`);
    return { of, ...setStanding(cover, row) };
  });
  const asked = every
    .filter((line) => isAskedSet(line.of, filter) && (filter.state === null || isInState(line, filter.state)))
    .sort(orderOf(filter));
  return {
    lines: asked.slice((page - 1) * perPage, page * perPage),
    all: asked.length,
    counts: countsOf(every),
    motors: [...cover.kinds.values()].reduce((sum, { length }) => sum + length, 0),
    refused: cover.refused.map(({ id }) => id),
  };
}

function countsOf(lines: readonly CoveredLine[]): CriticalityCount[] {
  return [1, 2, 3, 4, null].flatMap((criticality) => {
    const own = lines.filter(({ of }) => of.criticality === criticality);
    if (own.length === 0) return [];
    const inState = (state: CoverState) => own.filter((line) => isInState(line, state)).length;
    const states = { none: inState('none'), unsure: inState('unsure'), one: inState('one') };
    return [{ criticality, sets: own.length, states }];
  });
}

/** What nobody told stands last; what is equal goes by the fewest motors, then by tag. */
function orderOf({ sort, isDown }: CoverFilter): (a: CoveredLine, b: CoveredLine) => number {
  const way = isDown ? -1 : 1;
  const byTag = (a: CoveredLine, b: CoveredLine) => a.of.tag.localeCompare(b.of.tag, 'en', { numeric: true });
  const by: Record<CoverFilter['sort'], (a: CoveredLine, b: CoveredLine) => number> = {
    criticality: (a, b) => (a.of.criticality ?? 5) - (b.of.criticality ?? 5),
    tag: byTag,
    area: (a, b) => (a.of.area ?? '\uffff').localeCompare(b.of.area ?? '\uffff', 'en', { numeric: true }),
    motors: (a, b) => a.all - b.all,
  };
  return (a, b) => way * by[sort](a, b) || a.all - b.all || byTag(a, b);
}
