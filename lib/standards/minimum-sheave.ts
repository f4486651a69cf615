import { mmOfInches } from '@/lib/units/length';
import { hpOfKw } from '@/lib/units/power';
import type { Status } from './dimension';
import { minimumSheaves, type SheaveRow } from './tables/minimum-sheaves';

export interface MinimumSheave {
  pitchMm: number;
  status: Status;
  cite: string;
}

/**
 * Least pitch diameter of the motor's V-belt sheave (NEMA MG 1-14.42), by T frame, poles and rated kW. A rating below
 * the table's takes the next listed one of the same frame and speed. Null: the table says nothing for this motor.
 */
export function minimumSheave(frame: string, poles: number, kw: number): MinimumSheave | null {
  const t = T_FRAME.exec(frame)?.[1];
  const column = COLUMN_OF_POLES[poles];
  if (t === undefined || column === undefined) return null;
  const hp = hpOfKw(kw);
  let best: { hp: number; row: SheaveRow } | null = null;
  for (const row of minimumSheaves.rows as readonly SheaveRow[]) {
    const top = row[column]?.at(-1);
    if (row.frame !== t || top === undefined || top < hp * (1 - RATING_STEP)) continue;
    if (best === null || top < best.hp) best = { hp: top, row };
  }
  return best === null ? null : { pitchMm: mmOfInches(best.row.pitchIn), status: best.row.status, cite: CITE };
}

/** True for a T frame the clause lists: there power and poles set the least sheave. */
export function hasMinimumSheave(frame: string): boolean {
  const t = T_FRAME.exec(frame)?.[1];
  return t !== undefined && minimumSheaves.rows.some((row) => row.frame === t);
}

const CITE = 'NEMA MG 1-14.42';
/** 3.7 kW and 5 hp are one rating: pairs differ by up to 3 %. */
const RATING_STEP = 0.03;
const T_FRAME = /^(\d{3}T)(?!S)/;
const COLUMN_OF_POLES: Record<number, 'hp3600' | 'hp1800' | 'hp1200' | 'hp900'> = {
  2: 'hp3600',
  4: 'hp1800',
  6: 'hp1200',
  8: 'hp900',
};
