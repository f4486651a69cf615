import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { drivenBy } from '../driven';
import { servingRow } from '../fed';

/**
 * Can the motor carry the load it is said to carry? In kW, its service factor used up. A motor that has been turning this
 * pump is not far too small for it. Not asked without a load, or where no row of the plate is for the supply.
 */
export function load(set: PumpSet, motor: Motor | null): Doubt | null {
  if (motor === null) return null;
  const row = servingRow(set, motor);
  const asked = drivenBy(set, motor);
  if (row === null || row.kw === null || asked === null) return null;
  const factor = row.serviceFactor ?? motor.serviceFactor ?? UNPRINTED;
  const most = row.kw * factor;
  if (asked.motorKw <= most * ROUNDED) return null;
  const carried =
    factor === UNPRINTED ? `${figure(row.kw)} kW` : `${figure(row.kw)} kW × ${figure(factor)} = ${figure(most)} kW`;
  return {
    rule: 'load',
    thing: 'set',
    grade: asked.motorKw > most * FAR ? 'wrong' : 'doubtful',
    field: 'load.shaftKw',
    have: set.load.shaftKw,
    expected: Number(((set.load.shaftKw as number) * (most / asked.motorKw)).toPrecision(3)),
    unit: 'kW',
    says: `${asked.reckoned}; ${motor.id} carries ${carried}: ${figure((asked.motorKw / most) * 100, 0)} % of it.`,
    cite: 'NEMA MG 1-12.51: the service factor; limits common practice, no source',
    figures: figuresOf({ ...asked.figures, kw: row.kw, factor }),
  };
}

/** A service factor that is not printed is 1.0. */
const UNPRINTED = 1;
/** A pair of hp and kW, and a gauge, are good to a twentieth. */
const ROUNDED = 1.05;
/** An overload set to the plate lets no motor carry so much for long. */
const FAR = 1.3;
