import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { torqueNmOf } from '@/lib/units/torque';
import type { Doubt } from '../doubt';
import { servingRow } from '../fed';

/** Does the coupling or gear carry the motor's rated torque? In N·m. Not asked without its greatest torque. */
export function couplingTorque(set: PumpSet, motor: Motor | null): Doubt | null {
  const have = set.coupling.maxTorqueNm;
  if (have === null || motor === null) return null;
  const row = servingRow(set, motor);
  if (row === null || row.kw === null || row.rpm === null) return null;
  const rated = torqueNmOf(row.kw, row.rpm);
  if (rated <= have * ROUNDED) return null;
  return {
    rule: 'coupling-torque',
    thing: 'set',
    grade: rated > have * FAR ? 'wrong' : 'doubtful',
    field: 'coupling.maxTorqueNm',
    have,
    expected: Number(rated.toPrecision(3)),
    unit: 'N·m',
    says: `9549 × ${figure(row.kw)} kW / ${figure(row.rpm)} rpm = ${figure(rated, 1)} N·m of ${motor.id}; the coupling or gear is told to carry ${figure(have)} N·m.`,
    cite: 'T = 9550 P / n (read in two texts); limits common practice, no source',
    figures: figuresOf({ have, kw: row.kw, rpm: row.rpm }),
  };
}

const ROUNDED = 1.02;
/** A motor starts with twice its rated torque: a coupling this weak would not be there any more. */
const FAR = 2;
