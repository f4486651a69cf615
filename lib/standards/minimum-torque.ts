import type { Motor } from '@/lib/plant/motor';
import { hpOfKw } from '@/lib/units/power';
import { type Cell, citeOf } from './table';
import { breakdownTorque } from './tables/breakdown-torque';
import { iecTorque } from './tables/iec-torque';
import { lockedRotorTorque } from './tables/locked-rotor-torque';
import { pullUpTorque } from './tables/pull-up-torque';

export type TorqueKind = 'locked-rotor' | 'pull-up' | 'breakdown';

/** Per cent of full-load torque. */
export interface MinimumTorque {
  pct: number;
  cite: string;
}

/**
 * The least torque the design letter promises, or null where no standard read here sets one for that letter, power and
 * number of poles. Letters A to D are NEMA's; N and H with their E and Y are IEC's. A power between two printed ones
 * takes the larger's figure, which is never the higher.
 */
export function minimumTorque(
  kind: TorqueKind,
  design: NonNullable<Motor['design']>,
  kw: number,
  poles: number,
): MinimumTorque | null {
  switch (design) {
    case 'A':
    case 'B':
      return nema(kind, 'AB', kw, poles);
    case 'C':
      return ofDesignC(kind, kw, poles);
    case 'D':
      return ofDesignD(kind, kw, poles);
    case 'E':
      return null; // deleted from MG 1 in 2003: no table is in force
    case 'N':
    case 'NE':
    case 'NY':
    case 'NEY':
    // Design H starts with more torque than N at every power, so N's figure is a floor for it.
    case 'H':
    case 'HE':
    case 'HY':
    case 'HEY':
      return iec(kind, kw, poles);
  }
}

const NEMA_COLUMN_OF_POLES: Readonly<Record<number, number>> = { 2: 0, 4: 1, 6: 2, 8: 3, 10: 4, 12: 5, 14: 6 };
const IEC_COLUMN_OF_POLES: Readonly<Record<number, number>> = { 2: 0, 4: 1, 6: 2, 8: 3 };
const EIGHT_POLES = 3;

/** A kW plate rounds its hp (0.75 kW is 1.006 hp): within 1 % it is the same printed power. */
const ROUNDED = 1.01;

function nema(kind: TorqueKind, design: 'AB' | 'C', kw: number, poles: number): MinimumTorque | null {
  const table = kind === 'locked-rotor' ? lockedRotorTorque : kind === 'pull-up' ? pullUpTorque : breakdownTorque;
  const column = NEMA_COLUMN_OF_POLES[poles];
  if (column === undefined) return null;
  // The 900 rpm column of breakdown and pull-up torque also serves slower motors.
  const printed = kind === 'locked-rotor' ? column : Math.min(column, EIGHT_POLES);
  const hp = hpOfKw(kw) / ROUNDED;
  for (const row of table.rows)
    if (row.design === design && row.hp >= hp) return told(row.pct[printed], table.source.clause, 1);
  return null;
}

// A general table gives design C 190 to 225 per cent of breakdown torque; its low end is the promise.
const DESIGN_C_BREAKDOWN = { pct: 190, cite: 'NEMA MG 10 Table 2-1, design C (read in one text)' };
const DESIGN_D_LOCKED_ROTOR = { pct: 275, cite: 'MG 1-12.38, design D (read in one text)' };
const DESIGN_D_UP_TO_HP = 150;

function ofDesignC(kind: TorqueKind, kw: number, poles: number): MinimumTorque | null {
  if (kind === 'locked-rotor') return nema(kind, 'C', kw, poles);
  return kind === 'breakdown' ? DESIGN_C_BREAKDOWN : null;
}

function ofDesignD(kind: TorqueKind, kw: number, poles: number): MinimumTorque | null {
  const printed = poles >= 4 && poles <= 8 && hpOfKw(kw) <= DESIGN_D_UP_TO_HP * ROUNDED;
  return kind === 'locked-rotor' && printed ? DESIGN_D_LOCKED_ROTOR : null;
}

function iec(kind: TorqueKind, kw: number, poles: number): MinimumTorque | null {
  const column = IEC_COLUMN_OF_POLES[poles];
  if (column === undefined) return null;
  for (const row of iecTorque.rows) {
    if (kw <= row.kwOver || kw > row.kwUpTo) continue;
    const cells = kind === 'locked-rotor' ? row.lockedRotor : kind === 'pull-up' ? row.pullUp : row.breakdown;
    return told(cells[column], 'IEC 60034-12 Table 1', 100);
  }
  return null;
}

function told(cell: Cell | null | undefined, clause: string, pctPerUnit: number): MinimumTorque | null {
  if (cell === null || cell === undefined) return null;
  return { pct: cell[0] * pctPerUnit, cite: citeOf(clause, cell[1]) };
}
