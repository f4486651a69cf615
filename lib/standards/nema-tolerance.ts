import { mmOfInches } from '@/lib/units/length';
import { nemaTolerances } from './tables/nema-tolerances';

type Deviations = { plus: number; minus: number };

/** MG 1 4.4.1: D of rigid-base motors is never above nominal. */
export const heightTolerance = (): Deviations => D;
export const alongTolerance = (number: number): Deviations => (number < 100 ? TWO_F_SMALL : TWO_F);
/** No tolerance of 2E is printed for the small frames. */
export const acrossTolerance = (number: number): Deviations | null => (number < 100 ? null : TWO_E);
export const shoulderTolerance = (): Deviations => BA;

export function footHoleTolerance(number: number): Deviations | null {
  if (number < 100) return H_SLOT;
  if (number < 400) return H;
  return number < 500 ? H_LARGE : null;
}

/** MG 1 4.9.1, by shaft diameter in inches. */
export const shaftTolerance = (inches: number): Deviations => (inches <= 1.5 ? U : U_LARGE);

function printed(item: string, appliesTo: string): Deviations {
  const row = nemaTolerances.rows.find((one) => one.item === item && one.appliesTo === appliesTo);
  if (!row) throw new Error(`no tolerance of ${item} for ${appliesTo}`);
  const [plus, minus] = row.limits[0];
  return { plus: mmOfInches(plus), minus: mmOfInches(minus) };
}

const D = printed('D', 'rigid-base foot motors, all frames of the table');
const TWO_F_SMALL = printed('2F', 'frames 42 to 56H');
const TWO_F = printed('2F', 'frames 143T to 500');
const TWO_E = printed('2E', 'frames 143T to 500');
const BA = printed('BA', 'foot motors of 4.4.1');
const H_SLOT = printed('H (slot width)', 'frames 42 to 56H');
const H = printed('H', 'frames 143T to 365T');
const H_LARGE = printed('H', 'frames 404T to 449T');
const U = printed('U', '0.1875 to 1.5000 diameter');
const U_LARGE = printed('U', 'over 1.5000 to 6.500 diameter');
