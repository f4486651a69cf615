import { type JudgeAlike, judgeAlike, type PlacedMotor } from '@/lib/matching/alike/judge-alike';
import type { Fit } from '@/lib/matching/alike/kept-shares';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { type SetMarks, type SetNumbers, setMarks, setNumbers } from './set-marks';
import { type ShelfKind, shelfKinds } from './shelf-kinds';

/** One kind of shelf motor that could go into a set. */
export interface Serves {
  kind: ShelfKind;
  /** Without what a motor's own time on the shelf adds. */
  fit: Fit;
}

export interface SetCover {
  setId: string;
  set: PumpSet;
  /** In no order. */
  serves: readonly Serves[];
}

/** Which shelf motors could stand in for which sets. It is never changed: what comes after a change is another cover. */
export interface Cover {
  sets: ReadonlyMap<string, SetCover>;
  /** The motors of each kind that are on a shelf and may be offered. */
  kinds: ReadonlyMap<ShelfKind, readonly Motor[]>;
  /** On a shelf, and not to be offered: their winding reads below the least insulation. */
  refused: readonly Motor[];
  settings: SiteSettings;
  /** What a later cover begins with. */
  kept: Kept;
}

interface Kept {
  judge: JudgeAlike;
  byPlate: ReadonlyMap<Motor, ShelfKind>;
  placed: WeakMap<ShelfKind, PlacedKind>;
  numbers: SetNumbers;
}

interface PlacedKind extends PlacedMotor {
  kind: ShelfKind;
  /** The sets it has ever been found to serve, by any cover that goes on from one another: never too few, perhaps too many. */
  served: SetMarks;
}

/** Of the cover before, whatever did not change since is taken over: sets and motors that are the very same objects. */
export function coverOf(
  sets: ReadonlyMap<string, { set: PumpSet }>,
  shelf: Iterable<Motor>,
  settings: SiteSettings,
  before: Cover | null = null,
): Cover {
  const old = before !== null && isUsable(before, settings) ? before : null;
  const judge = old?.kept.judge ?? judgeAlike(settings);
  const placed: Kept['placed'] = old?.kept.placed ?? new WeakMap();
  const numbers = old?.kept.numbers ?? setNumbers();
  const { kinds, byPlate, refused } = shelfKinds(shelf, old?.kept.byPlate ?? new Map());
  const placedOf = (kind: ShelfKind): PlacedKind => {
    const known = placed.get(kind) ?? { ...judge.ofMotor(kind.one), kind, served: setMarks() };
    placed.set(kind, known);
    return known;
  };
  const all = [...kinds.keys()];
  const added = old === null ? all : all.filter((kind) => !old.kinds.has(kind));
  const gone = old === null ? [] : [...old.kinds.keys()].filter((kind) => !kinds.has(kind));
  const isGone = new Set(gone);
  const servedByGone = gone.map((kind) => placedOf(kind).served);
  const fitsOfAll = judge.fitsOf(all.map(placedOf));
  const fitsOfAdded = judge.fitsOf(added.map(placedOf));

  let found: Serves[] = [];
  let number = UNASKED;
  let now = '';
  const numberNow = () => {
    if (number === UNASKED) number = numbers.of(now);
    return number;
  };
  const tell = ({ kind, served }: PlacedKind, fit: Fit) => {
    served.add(numberNow());
    found.push({ kind, fit });
  };
  const mayLose = () => servedByGone.some(({ has }) => has(numberNow()));
  const rows = new Map<string, SetCover>();
  for (const [setId, { set }] of sets) {
    const row = old?.sets.get(setId);
    const isKept = row !== undefined && row.set === set;
    number = UNASKED;
    now = setId;
    if (!isKept) fitsOfAll(judge.ofSet(set), tell);
    else if (added.length > 0) fitsOfAdded(judge.ofSet(set), tell);
    // Most sets are served by none of those that came or went: nothing is looked through or made for them.
    const loses = isKept && gone.length > 0 && mayLose() && row.serves.some(({ kind }) => isGone.has(kind));
    if (isKept && !loses && found.length === 0) {
      rows.set(setId, row);
      continue;
    }
    const still = loses ? row.serves.filter(({ kind }) => !isGone.has(kind)) : isKept ? row.serves : [];
    rows.set(setId, { setId, set, serves: still.length === 0 ? found : still.concat(found) });
    found = [];
  }
  return { sets: rows, kinds, refused, settings, kept: { judge, byPlate, placed, numbers } };
}

/** No set has it for its number. */
const UNASKED = -1;

/** So many times the kinds that are there now may have been gathered before all is begun anew. */
const MOST_GATHERED = 60;
const LEAST_GATHERED = 10_000;

function isUsable({ settings: old, sets, kinds, kept }: Cover, settings: SiteSettings): boolean {
  if (kept.judge.gathered() + kept.numbers.count() > LEAST_GATHERED + MOST_GATHERED * (sets.size + kinds.size))
    return false;
  return old === settings || JSON.stringify(old) === JSON.stringify(settings);
}
