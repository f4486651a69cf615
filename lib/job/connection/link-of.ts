import type { RatingRow } from '@/lib/matching/context/rating-row';
import type { Start } from '@/lib/matching/starting/start-of';
import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';

export type Link = 'star' | 'delta' | 'series-star' | 'parallel-star' | 'series-delta' | 'parallel-delta' | 'parallel';

/**
 * How the coils are linked at the volts of this rating row: as printed, or by a pair of voltages on the plate that
 * leaves no choice (1 : √3 star and delta, 1 : 2 parallel and series). Null: the plate does not tell, or contradicts the
 * winding.
 */
export function linkOf(motor: Motor, row: RatingRow, start: Start | null): Link | null {
  const { plate } = row;
  if (plate === null || motor.winding === null) return null;
  const halves = halvesOf(motor, plate);
  switch (motor.winding) {
    case 'star-delta-6':
      return row.link ?? (start === 'star-delta' ? 'delta' : null);
    case 'star-9':
      return halves === null || row.link === 'delta' ? null : `${halves}-star`;
    case 'delta-9':
      return halves === null || row.link === 'star' ? null : `${halves}-delta`;
    case 'star-delta-12':
      // Made to start in star, it runs in delta unless its plate says star at these volts (a motor shop's note, one text).
      return halves === null ? null : `${halves}-${row.link ?? 'delta'}`;
    case 'part-winding-6':
      return 'parallel';
  }
}

/** Whether the two halves of each phase lie in series (the higher volts) or in parallel; null where nothing tells. */
function halvesOf(motor: Motor, plate: Rating): 'series' | 'parallel' | null {
  const { connection } = plate;
  if (connection === 'series-star' || connection === 'series-delta') return 'series';
  if (connection === 'parallel-star' || connection === 'parallel-delta') return 'parallel';
  const here = voltsOf(plate);
  if (here === null) return null;
  for (const other of motor.ratings) {
    const there = voltsOf(other);
    if (there === null || other.hertz !== plate.hertz) continue;
    if (isTwo(there / here)) return 'parallel';
    if (isTwo(here / there)) return 'series';
  }
  return null;
}

function voltsOf({ volts, voltsMin, voltsMax }: Rating): number | null {
  return volts ?? voltsMax ?? voltsMin;
}

const isTwo = (ratio: number) => Math.abs(ratio / 2 - 1) <= ROUNDED;
/** 208-230/460, 220/440 and 380/760 are exact at their upper ends; 200/400 and 230/480 are near. */
const ROUNDED = 0.06;
