import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { fedOf, rowAtSupply, SERVES } from '../fed';

/**
 * Is the motor plated for the volts it is fed with? In V, the plate's usual shortfall (460 on 480) allowed for. Not asked
 * where no row is for the supply's hertz: then rule `supply-hertz` speaks.
 */
export function supplyVolts(set: PumpSet, motor: Motor | null): Doubt | null {
  const { volts: have, isOnDrive, fields } = fedOf(set);
  if (have === null || motor === null) return null;
  const nearest = rowAtSupply(set, motor);
  if (nearest === null || Math.abs(nearest.off) <= SERVES + DUST) return null;
  const { row, off } = nearest;
  const plated = row.volts ?? row.voltsMax ?? row.voltsMin;
  return {
    rule: 'supply-volts',
    thing: 'set',
    grade: Math.abs(off) > FAR && !isOnDrive ? 'wrong' : 'doubtful',
    field: fields.volts,
    have,
    expected: plated,
    unit: 'V',
    says: `${figure(have)} V on a plate of ${figure(plated as number)} V: ${figure(Math.abs(off) * 100, 1)} % ${off > 0 ? 'above' : 'below'} the nearest row of ${motor.id}, where 10 % is allowed.`,
    cite: 'NEMA MG 1-12.44: 10 % above and below (read in one text)',
    figures: figuresOf({ volts: have, row: plated, hertz: row.hertz }),
  };
}

/** 506 V on 460 is 10 % in print and a hair more in binary. */
const DUST = 1e-9;
const FAR = 0.25;
