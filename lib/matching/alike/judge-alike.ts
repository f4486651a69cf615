import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { type RatingRow, ratingRowOf } from '../context/rating-row';
import type { Criterion } from '../criterion';
import type { Finding } from '../finding';
import { byFootHoles } from '../screen/by-foot-holes';
import { byHeight } from '../screen/by-height';
import { byHolding } from '../screen/by-holding';
import { type LoadBlocks, loadBlocksOf, motorBoundAt } from '../screen/load-bound';
import { type Aspect, motorKeyOf, setKeyOf } from './aspect';
import { aspects, fittedOut, supplied } from './aspects';
import { ContextAsRead } from './context-as-read';
import { type Fit, type Kept, keptShares } from './kept-shares';
import { cells, cellsOfOne, type Kinds, kindsOf } from './tables';

/** A set with the number of its kind in each table. */
export interface PlacedSet {
  set: PumpSet;
  kinds: readonly number[];
  /** The same number for sets that are alike in all that sieves read. */
  sieved: number;
  blocks: LoadBlocks;
}
export interface PlacedMotor {
  motor: Motor;
  kinds: readonly number[];
}

export interface JudgeAlike {
  ofSet: (set: PumpSet) => PlacedSet;
  ofMotor: (motor: Motor) => PlacedMotor;
  /** How the motor would go in, without its own time on a shelf; null: unsuitable. */
  fit: (set: PlacedSet, motor: PlacedMotor) => Fit | null;
  /** The same for many sets: of these motors those that would go in are told one by one. */
  fitsOf: <T extends PlacedMotor>(motors: readonly T[]) => (set: PlacedSet, tell: (motor: T, fit: Fit) => void) => void;
  /** How many kinds it has gathered, of sets and of motors, those that are long gone among them. */
  gathered: () => number;
}

/** So few motors go through the sieves one by one: to share what those leave pays where there are many. */
const FEW = 8;

type At = (set: PlacedSet, motor: PlacedMotor) => Kept;

/**
 * Judges very many pairs of sets and motors: verdict, hours and checks of `assess`, without the findings. Every aspect is
 * asked once for the sets and the motors that are alike in it, the cheapest first, and no more after the first block. It is
 * kept as long as the settings hold.
 */
export function judgeAlike(settings: SiteSettings): JudgeAlike {
  const shares = keptShares(settings);
  const all: Kinds[] = [];
  const ofKinds = (kinds: Kinds, answer: (set: PumpSet, motor: Motor) => Kept): At => {
    const [at, index] = [cells(kinds, answer), all.push(kinds) - 1];
    return (set, motor) => at(set.kinds[index] as number, motor.kinds[index] as number);
  };
  const kept = (criteria: readonly Criterion[], set: PumpSet, motor: Motor, rowOf: () => RatingRow): Kept => {
    const context = new ContextAsRead(set, motor, settings, rowOf);
    const findings: Finding[] = [];
    for (const ask of criteria) {
      const finding = ask(set, motor, context);
      if (finding === null) continue;
      if (finding.grade === 'block') return shares.blocked;
      findings.push(finding);
    }
    return shares.of(findings);
  };
  const ofAspect = (aspect: Aspect, kinds = kindsOf(keysOf(aspect))): At =>
    ofKinds(kinds, (set, motor) => kept(aspect.criteria, set, motor, () => ratingRowOf(set, motor)));

  // Table 0: its kinds are those of the rating rows too, which rest on the supply and what is electrical of a plate.
  const rowKinds = kindsOf(keysOf(supplied));
  const [rows, bounds] = [cells(rowKinds, ratingRowOf), cells(rowKinds, motorBoundAt)];
  const first = [ofAspect(supplied, rowKinds), ofAspect(fittedOut)];
  // What the screen blocks is blocked for certain, though the grades rest on more than it reads.
  const screen = [byHeight, byHolding, byFootHoles].map(({ criteria, ...reads }) =>
    ofKinds(kindsOf(reads), (set, motor) =>
      kept(criteria, set, motor, () => ratingRowOf(set, motor)) === shares.blocked ? shares.blocked : shares.nothing,
    ),
  );
  const ofEach = ({ criteria }: Aspect): At => {
    let supply = 0;
    const at = cellsOfOne(rowKinds.motors, (set, motor, kind) => {
      const row = rows(supply, kind);
      return kept(criteria, set, motor, () => row);
    });
    return ({ set, kinds }, motor) => {
      supply = kinds[0] as number;
      return at(set, motor.kinds[0] as number);
    };
  };
  const rest = aspects.map((aspect) => (aspect.ofSet === 'all' ? ofEach(aspect) : ofAspect(aspect)));

  const placed = new WeakMap<PumpSet, PlacedSet>();
  const sieves = [...first, ...screen];
  const sievedAlike = new Map<string, number>();
  const isTooFar = (set: PlacedSet, motor: PlacedMotor) =>
    set.blocks(bounds(set.kinds[0] as number, motor.kinds[0] as number));
  const afterSieves = (set: PlacedSet, motor: PlacedMotor): Fit | null => {
    let sum = shares.nothing;
    for (const at of first) sum = shares.joined(sum, at(set, motor));
    for (const at of rest) {
      const answer = at(set, motor);
      if (answer === shares.blocked) return null;
      sum = shares.joined(sum, answer);
    }
    return sum.fit;
  };
  const fit = (set: PlacedSet, motor: PlacedMotor): Fit | null => {
    if (isTooFar(set, motor)) return null;
    for (const at of sieves) if (at(set, motor) === shares.blocked) return null;
    return afterSieves(set, motor);
  };
  return {
    ofSet: (set) => {
      const known = placed.get(set);
      if (known !== undefined) return known;
      const kinds = all.map(({ sets }) => sets.of(set));
      const alike = kinds.slice(0, sieves.length).join(' ');
      const sieved = sievedAlike.get(alike) ?? sievedAlike.size;
      sievedAlike.set(alike, sieved);
      const one = { set, kinds, sieved, blocks: loadBlocksOf(set) };
      placed.set(set, one);
      return one;
    },
    ofMotor: (motor) => ({ motor, kinds: all.map(({ motors }) => motors.of(motor)) }),
    fit,
    fitsOf: (motors) => {
      const isFew = motors.length <= FEW;
      const left = isFew ? () => motors : sieved(motors, sieves, shares.blocked);
      const fitOfLeft = isFew
        ? fit
        : (set: PlacedSet, motor: PlacedMotor) => (isTooFar(set, motor) ? null : afterSieves(set, motor));
      return (set, tell) => {
        for (const motor of left(set)) {
          const found = fitOfLeft(set, motor);
          if (found !== null) tell(motor, found);
        }
      };
    },
    gathered: () => all.reduce((n, { sets, motors }) => n + sets.ones.length + motors.ones.length, 0),
  };
}

const keysOf = (aspect: Aspect) => ({ ofSet: setKeyOf(aspect), ofMotor: motorKeyOf(aspect) });

/** What one sieve after the other leaves: sets whose first sieves are alike share what those left. */
function sieved<T extends PlacedMotor>(motors: readonly T[], sieves: readonly At[], blocked: Kept) {
  interface Left {
    motors: readonly T[];
    next: Map<number, Left>;
  }
  const root: Left = { motors, next: new Map() };
  const known: (readonly T[] | undefined)[] = [];
  return (set: PlacedSet): readonly T[] => {
    const before = known[set.sieved];
    if (before !== undefined) return before;
    let left = root;
    sieves.forEach((at, i) => {
      const kind = set.kinds[i] as number;
      const after = left.next.get(kind);
      const next = after ?? { motors: left.motors.filter((motor) => at(set, motor) !== blocked), next: new Map() };
      if (after === undefined) left.next.set(kind, next);
      left = next;
    });
    known[set.sieved] = left.motors;
    return left.motors;
  };
}
