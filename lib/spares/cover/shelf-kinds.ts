import { kindsOf } from '@/lib/matching/screen/kinds';
import { spareState } from '@/lib/matching/spare-state';
import type { Motor } from '@/lib/plant/motor';

/** Motors on a shelf that every criterion judges alike. It stays the same object as long as one of them is there. */
export interface ShelfKind {
  /** One that stands for all, perhaps gone since. */
  one: Motor;
}

interface ShelfKinds {
  /** The motors of each kind, in the order of the shelf. */
  kinds: ReadonlyMap<ShelfKind, readonly Motor[]>;
  byPlate: ReadonlyMap<Motor, ShelfKind>;
  /** Not to be offered: their winding reads below the least insulation. */
  refused: readonly Motor[];
}

/** Gathers what is on a shelf. `known`: motors of before, which keep their kind. */
export function shelfKinds(shelf: Iterable<Motor>, known: ReadonlyMap<Motor, ShelfKind>): ShelfKinds {
  const [offered, refused, unknown]: [Motor[], Motor[], Motor[]] = [[], [], []];
  for (const motor of shelf) {
    if (known.has(motor)) offered.push(motor);
    else if (spareState(motor, null).refused !== null) refused.push(motor);
    else {
      offered.push(motor);
      unknown.push(motor);
    }
  }
  const found = kindsOfUnknown(unknown, known);
  const kinds = new Map<ShelfKind, Motor[]>();
  const byPlate = new Map<Motor, ShelfKind>();
  for (const motor of offered) {
    const kind = (known.get(motor) ?? found.get(motor)) as ShelfKind;
    const members = kinds.get(kind);
    if (members === undefined) kinds.set(kind, [motor]);
    else members.push(motor);
    byPlate.set(motor, kind);
  }
  return { kinds, byPlate, refused };
}

/** One that comes may be of a kind that is there. */
function kindsOfUnknown(unknown: readonly Motor[], known: ReadonlyMap<Motor, ShelfKind>): Map<Motor, ShelfKind> {
  const found = new Map<Motor, ShelfKind>();
  if (unknown.length === 0) return found;
  const byOne = new Map([...new Set(known.values())].map((kind) => [kind.one, kind]));
  for (const { one, members } of kindsOf([...byOne.keys(), ...unknown])) {
    const kind = byOne.get(one) ?? { one };
    for (const motor of members) found.set(motor, kind);
  }
  return found;
}
