import type { RatingInput } from '@/lib/nameplate/plate-reading';

export type RatingRow = RatingInput;

/**
 * Which recorded row each told row is: the one of the same voltage and frequency, as far as both tell them. One row told
 * and one recorded are the same row. Rows that meet none are new and come after; a row that could be two is a problem.
 */
export function alignRatings(
  told: readonly RatingRow[],
  kept: readonly RatingRow[],
): { places: number[]; problem: string | null } {
  if (told.length === 1 && kept.length === 1) return { places: [0], problem: null };
  const places: number[] = [];
  let next = kept.length;
  for (const row of told) {
    const could = kept.flatMap((other, i) =>
      KEYS.every((key) => meets(row, other, key)) && !places.includes(i) ? [i] : [],
    );
    const exact = could.filter((i) => KEYS.every((key) => (row[key] ?? null) === (kept[i]?.[key] ?? null)));
    const [only, ...more] = exact.length > 0 ? exact : could;
    if (only !== undefined && more.length > 0)
      return {
        places: [],
        problem: `has a rating that could be row ${[only, ...more].map((i) => i + 1).join(' or row ')} of the recorded plate: tell its volts and hertz`,
      };
    if (only !== undefined) places.push(only);
    else {
      places.push(next);
      next += 1;
    }
  }
  return { places, problem: next > MOST_RATINGS ? `would give the plate more than ${MOST_RATINGS} ratings` : null };
}

const KEYS = ['volts', 'voltsMin', 'voltsMax', 'hertz', 'connection'] as const;
const MOST_RATINGS = 24;

const meets = (a: RatingRow, b: RatingRow, key: (typeof KEYS)[number]): boolean =>
  a[key] == null || b[key] == null || a[key] === b[key];
