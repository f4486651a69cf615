import type { Fit } from '@/lib/matching/alike/kept-shares';
import { VERDICTS } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { byCluster, type Cluster, clusterOfMotor, clusterOfSet } from './cluster';
import type { Cover, SetCover } from './cover';
import type { ShelfKind } from './shelf-kinds';

/** Sets of one cluster against shelf motors of one cluster. */
export interface MatrixCell {
  best: Fit['verdict'];
  /** Shelf motors of the column that could go into at least one set of the row. */
  motors: number;
  /** A set of the row and a motor of the column that could go into it, counted each. */
  pairs: number;
}

export interface MatrixRow {
  cluster: Cluster;
  /** The frames of the failed motors, those that a plate tells. */
  frames: readonly string[];
  sets: readonly SetCover[];
  /** So many of them have no shelf motor at all, in whatever column. */
  bare: number;
  /** One a column; null: nothing could go in. */
  cells: readonly (MatrixCell | null)[];
}

export interface MatrixColumn {
  cluster: Cluster;
  motors: readonly Motor[];
  /** Over all rows. */
  pairs: number;
}

/** Which kinds of shelf motor could stand in for which kinds of set. */
export interface Matrix {
  rows: readonly MatrixRow[];
  columns: readonly MatrixColumn[];
}

/** These sets of a cover against all its shelf motors; each stands in one row or column, in the order of `byCluster`. */
export function matrixOf({ kinds }: Pick<Cover, 'kinds'>, asked: Iterable<SetCover>): Matrix {
  const columns = clustered(kinds, ([{ one }]) => clusterOfMotor(one));
  const columnOf = new Map(columns.flatMap(({ members }, i) => members.map(([kind]) => [kind, i] as const)));
  const pairs = columns.map(() => 0);
  const rows = clustered(asked, ({ set }) => clusterOfSet(set)).map(({ cluster, members }): MatrixRow => {
    const cells = columns.map(() => newCell());
    for (const { serves } of members) {
      for (const { kind, fit } of serves) {
        const at = columnOf.get(kind);
        const count = kinds.get(kind)?.length;
        if (at === undefined || count === undefined) continue; // gone from the shelf since
        add(cells[at] as Cell, kind, fit, count);
        pairs[at] = (pairs[at] as number) + count;
      }
    }
    const bare = members.filter(({ serves }) => !serves.some(({ kind }) => columnOf.has(kind))).length;
    return { cluster, frames: framesOf(members.map(({ set }) => set)), sets: members, bare, cells: cells.map(told) };
  });
  return {
    rows,
    columns: columns.map(({ cluster, members }, i) => {
      const motors = members.flatMap(([, motors]) => motors);
      return { cluster, motors, pairs: pairs[i] as number };
    }),
  };
}

interface Cell {
  best: Fit['verdict'] | null;
  kinds: Set<ShelfKind>;
  motors: number;
  pairs: number;
}

const newCell = (): Cell => ({ best: null, kinds: new Set(), motors: 0, pairs: 0 });

function add(cell: Cell, kind: ShelfKind, { verdict }: Fit, count: number): void {
  if (cell.best === null || VERDICTS.indexOf(verdict) < VERDICTS.indexOf(cell.best)) cell.best = verdict;
  if (!cell.kinds.has(kind)) cell.motors += count;
  cell.kinds.add(kind);
  cell.pairs += count;
}

const told = ({ best, motors, pairs }: Cell): MatrixCell | null => (best === null ? null : { best, motors, pairs });

function clustered<T>(things: Iterable<T>, clusterOf: (thing: T) => Cluster): { cluster: Cluster; members: T[] }[] {
  const byKey = new Map<string, { cluster: Cluster; members: T[] }>();
  for (const thing of things) {
    const cluster = clusterOf(thing);
    const key = JSON.stringify(cluster);
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, { cluster, members: [thing] });
    else known.members.push(thing);
  }
  return [...byKey.values()].sort((a, b) => byCluster(a.cluster, b.cluster));
}

function framesOf(things: readonly Pick<PumpSet, 'failed'>[]): string[] {
  const frames = things.flatMap(({ failed }) => (failed?.frame ? [motorDimensions(failed).frame] : []));
  return [...new Set(frames)].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}
