import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { drivenBy } from '../driven';
import { servingRow } from '../fed';

/**
 * Does a drive-fed set lean on a service factor? A drive leaves it at 1.0: a load between the rating and the rating times
 * its service factor is too much there. A service factor on the plate alone is no doubt. Not asked off a drive.
 */
export function driveServiceFactor(set: PumpSet, motor: Motor | null): Doubt | null {
  if (set.supply.start !== 'drive' || motor === null) return null;
  const row = servingRow(set, motor);
  const asked = drivenBy(set, motor);
  if (row === null || row.kw === null || asked === null) return null;
  const factor = row.serviceFactor ?? motor.serviceFactor;
  if (factor === null || factor <= 1 || asked.motorKw <= row.kw * ROUNDED || asked.motorKw > row.kw * factor * ROUNDED)
    return null;
  return {
    rule: 'drive-service-factor',
    thing: 'set',
    grade: 'doubtful',
    field: 'load.shaftKw',
    have: set.load.shaftKw,
    expected: Number(((set.load.shaftKw as number) * (row.kw / asked.motorKw)).toPrecision(3)),
    unit: 'kW',
    says: `${asked.reckoned}, ${figure(asked.motorKw / row.kw)} times the ${figure(row.kw)} kW of ${motor.id}: its service factor of ${figure(factor)} is not there on a drive.`,
    cite: 'service factor 1.0 on a drive (from memory)',
    figures: figuresOf({ ...asked.figures, kw: row.kw, factor }),
  };
}

const ROUNDED = 1.05;
