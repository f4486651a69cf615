import { hpOfKw } from '@/lib/units/power';
import { citeOf } from './table';
import { fullLoadCurrents } from './tables/full-load-currents';

export interface FullLoadCurrent {
  amps: number;
  cite: string;
}

/**
 * The electrical code's table current for a power at a rated motor voltage. It sizes a circuit; it never tells what a
 * motor draws. Null where nothing is printed for that power, voltage or number of phases.
 */
export function fullLoadCurrent(phases: 1 | 3, kw: number, ratedVolts: number): FullLoadCurrent | null {
  const column = VOLTS.indexOf(ratedVolts);
  if (column < 0) return null;
  const hp = hpOfKw(kw);
  for (const row of fullLoadCurrents.rows) {
    if (row.phases !== phases || Math.abs(row.hp - hp) > row.hp * ROUNDED) continue;
    const cell = row.amps[column];
    return cell === null || cell === undefined
      ? null
      : { amps: cell[0], cite: citeOf(phases === 1 ? 'NEC Table 430.248' : 'NEC Table 430.250', cell[1]) };
  }
  return null;
}

/** The columns of the table, in its order. */
const VOLTS: readonly number[] = [115, 200, 208, 230, 460, 575, 2300];
/** A kW plate rounds its hp: 0.75 kW is 1.006 hp, 0.37 kW is 0.496 hp. */
const ROUNDED = 0.02;
