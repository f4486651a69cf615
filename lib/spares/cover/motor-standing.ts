import type { Fit } from '@/lib/matching/alike/kept-shares';
import type { Motor } from '@/lib/plant/motor';
import type { Cover, SetCover } from './cover';
import type { Counts } from './set-standing';
import type { ShelfKind } from './shelf-kinds';

/** A set that a shelf motor could go into. */
export interface Protected {
  of: SetCover;
  fit: Fit;
  /** How many shelf motors could still go in once one of this kind is used. */
  left: number;
}

/** What one shelf motor is worth to the plant. */
export interface MotorStanding {
  motor: Motor;
  /** How many motors of its kind are on a shelf, itself among them. */
  alike: number;
  /** The sets it could go into, in no order. Motors of one kind share the list. */
  sets: readonly Protected[];
  counts: Counts;
  /** Used tonight it would leave so many of them with none, and so many with a single one. */
  leavesNone: number;
  leavesOne: number;
}

/** Every shelf motor that may be offered, by plant number. Worked out once for a cover. */
export function motorStandings(cover: Cover): readonly MotorStanding[] {
  const known = kept.get(cover);
  if (known !== undefined) return known;
  const sets = new Map<ShelfKind, Protected[]>([...cover.kinds.keys()].map((kind) => [kind, []]));
  for (const of of cover.sets.values()) {
    const all = of.serves.reduce((sum, { kind }) => sum + (cover.kinds.get(kind)?.length ?? 0), 0);
    for (const { kind, fit } of of.serves) sets.get(kind)?.push({ of, fit, left: all - 1 });
  }
  const standings = [...cover.kinds].flatMap(([kind, members]) => {
    const own = sets.get(kind) ?? [];
    const counts: Counts = { 'straight-swap': 0, 'swap-with-work': 0, 'check-first': 0 };
    let [leavesNone, leavesOne] = [0, 0];
    for (const { fit, left } of own) {
      counts[fit.verdict] += 1;
      if (left === 0) leavesNone += 1;
      if (left === 1) leavesOne += 1;
    }
    return members.map((motor) => ({ motor, alike: members.length, sets: own, counts, leavesNone, leavesOne }));
  });
  standings.sort((a, b) => (a.motor.id < b.motor.id ? -1 : 1));
  kept.set(cover, standings);
  return standings;
}

const kept = new WeakMap<Cover, readonly MotorStanding[]>();
