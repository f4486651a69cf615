import type { Motor } from '@/lib/plant/motor';
import { hpOfKw } from '@/lib/units/power';
import { codeLetter } from './code-letter';
import { citeOf } from './table';
import { lockedRotorCurrents } from './tables/locked-rotor-currents';

export interface LockedRotorCurrent {
  amps: number;
  cite: string;
}

/**
 * The most current a motor of this code letter may take with its rotor locked, at `volts` between its lines:
 * I = 1000 · kVA/hp · hp / (√3 · V), single-phase without the √3. Null for the open band V.
 */
export function currentOfCodeLetter(
  letter: NonNullable<Motor['codeLetter']>,
  kw: number,
  volts: number,
  phases: 1 | 3,
): LockedRotorCurrent | null {
  const band = codeLetter(letter);
  if (band === null || band.to === null) return null;
  return { amps: (1000 * band.to * hpOfKw(kw)) / ((phases === 3 ? Math.sqrt(3) : 1) * volts), cite: band.cite };
}

/**
 * The most a NEMA motor of design B, C or D may take at 60 Hz; null for other letters (design A has no ceiling) and for
 * powers beyond the table. A power between two printed ones takes the larger's figure.
 */
export function currentOfDesign(
  design: NonNullable<Motor['design']>,
  kw: number,
  volts: number,
): LockedRotorCurrent | null {
  if (design !== 'B' && design !== 'C' && design !== 'D') return null;
  const hp = hpOfKw(kw) / ROUNDED;
  for (const row of lockedRotorCurrents.rows)
    if (row.hp >= hp)
      return {
        amps: (row.amps[0] * PRINTED_VOLTS) / volts,
        cite: citeOf(lockedRotorCurrents.source.clause, row.amps[1]),
      };
  return null;
}

const PRINTED_VOLTS = 230;
/** A kW plate rounds its hp (0.75 kW is 1.006 hp): within 1 % it is the same printed power. */
const ROUNDED = 1.01;
