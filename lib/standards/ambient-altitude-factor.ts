import { derating } from './tables/derating';

/** Usual service: no derating up to here. NEMA MG 1 14.2.1, IEC 60034-1 6.2 and 6.3 (read in two texts). */
export const USUAL_AMBIENT_C = 40;
export const USUAL_ALTITUDE_M = 1000;
/** The coldest usual service: NEMA MG 1 31.1.2 by a trade article, IEC 60034-1 6.4 (read in one text). */
export const COLDEST_USUAL_C = -15;

/**
 * Share of rated output a motor built for 40 °C keeps at an ambient and altitude; above 1 where it could give more.
 * Between two printed ambients it is linear; a height between two printed ones takes the higher, as the printed bands
 * do. Colder than 30 °C is judged as 30 °C. Null above 60 °C or 4000 m, where nothing is printed.
 */
export function ambientAltitudeFactor(ambientC: number, altitudeM: number): number | null {
  const column = columnOf(altitudeM);
  if (column === null) return null;
  const { rows } = derating;
  let lower = rows[0];
  if (lower === undefined) return null;
  if (ambientC <= lower.ambientC) return factorIn(lower, column);
  for (const upper of rows) {
    if (upper.ambientC < ambientC) {
      lower = upper;
      continue;
    }
    const from = factorIn(lower, column);
    const to = factorIn(upper, column);
    if (from === null || to === null) return null;
    const along = (ambientC - lower.ambientC) / (upper.ambientC - lower.ambientC);
    return from + (to - from) * along;
  }
  return null;
}

const ALTITUDES_M = [1000, 1500, 2000, 2500, 3000, 3500, 4000] as const;

function columnOf(altitudeM: number): number | null {
  for (let i = 0; i < ALTITUDES_M.length; i++) if (altitudeM <= (ALTITUDES_M[i] as number)) return i;
  return null;
}

const factorIn = (row: (typeof derating.rows)[number], column: number): number | null =>
  row.factors[column]?.[0] ?? null;
