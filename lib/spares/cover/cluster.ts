import { seatOf } from '@/lib/matching/context/seat';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';

/** What sets, or motors, are alike in that stand together in the matrix. Null: not known. */
export interface Cluster {
  system: FrameDimensions['system'];
  /** Whole mm: no two shaft heights of one system lie closer (NEMA MG 1 4.2.1, IEC 60072-1). */
  shaftHeightMm: number | null;
  phases: 1 | 3 | null;
  /** Of a set its one supply (a drive's input); of a motor every pair of its ratings once, by hertz, then volts. */
  supplies: readonly Supply[];
}

interface Supply {
  volts: number | null;
  hertz: number | null;
}

/** The height is that of the seat: measured at the set, else by the failed motor's frame. */
export function clusterOfSet(set: PumpSet): Cluster {
  const { phases, volts, hertz } = set.supply;
  return {
    system: set.failed === null ? null : motorDimensions(set.failed).system,
    shaftHeightMm: whole(seatOf(set).shaftHeight.value),
    phases,
    supplies: [{ volts, hertz }],
  };
}

export function clusterOfMotor(motor: Motor): Cluster {
  const { system, dimensions } = motorDimensions(motor);
  const supplies = new Map(motor.ratings.map(({ volts, hertz }) => [`${volts} ${hertz}`, { volts, hertz }]));
  return {
    system,
    shaftHeightMm: whole(dimensions.shaftHeightMm.value),
    phases: motor.phases,
    supplies: [...supplies.values()].sort(bySupply),
  };
}

const whole = (mm: number | null) => (mm === null ? null : Math.round(mm));

/** NEMA before IEC, then by shaft height, phases (three first), hertz and volts; what is not known stands last. */
export function byCluster(a: Cluster, b: Cluster): number {
  return (
    inOrder(SYSTEMS.indexOf(a.system), SYSTEMS.indexOf(b.system)) ||
    inOrder(a.shaftHeightMm, b.shaftHeightMm) ||
    inOrder(PHASES.indexOf(a.phases), PHASES.indexOf(b.phases)) ||
    bySupplies(a.supplies, b.supplies)
  );
}

const SYSTEMS: readonly Cluster['system'][] = ['NEMA', 'IEC', null];
const PHASES: readonly Cluster['phases'][] = [3, 1, null];

function bySupplies(a: readonly Supply[], b: readonly Supply[]): number {
  for (const [i, one] of a.entries()) {
    const other = b[i];
    if (other === undefined) break;
    const order = bySupply(one, other);
    if (order !== 0) return order;
  }
  return a.length - b.length;
}

const bySupply = (a: Supply, b: Supply) => inOrder(a.hertz, b.hertz) || inOrder(a.volts, b.volts);

function inOrder(a: number | null, b: number | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a - b;
}
