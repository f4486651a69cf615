import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { frequencyDerate } from '@/lib/standards/frequency-derate';

/**
 * Power left on the other mains frequency; null when it cannot be told. 60 to 50 Hz by the derating table, never above
 * five sixths; 50 to 60 Hz the plate's times φ·f/fn, at most 1.15 of it. Other frequencies have no rule here.
 */
export function reratedKw(candidate: Motor, plate: Rating, hertz: number | null, phi: number | null): number | null {
  if (plate.kw === null || plate.hertz === null || hertz === null || phi === null) return null;
  const step = hertz / plate.hertz;
  if (isNear(step, 5 / 6)) {
    const derate = frequencyDerate(enclosureOf(candidate), phi * step);
    return derate === null ? null : plate.kw * derate.share;
  }
  if (isNear(step, 6 / 5)) return plate.kw * Math.min(phi * step, GREATEST_GAIN);
  return null;
}

/** A motor driven 1.2 times faster is cooled better, but its iron and windage lose more: common practice. */
const GREATEST_GAIN = 1.15;
const isNear = (step: number, exact: number) => Math.abs(step / exact - 1) <= 0.04; // each frequency within 2 %

/** Open only when the plate says so: the table's closed column is the lower one. */
const enclosureOf = ({ enclosure, ip, poles }: Motor): 'open' | 'closed' => {
  const isPrinted = poles === null || poles <= 6;
  const isOpen = enclosure === null ? (ip?.startsWith('IP2') ?? false) : OPEN.has(enclosure.toUpperCase());
  return isOpen && isPrinted ? 'open' : 'closed';
};

const OPEN: ReadonlySet<string> = new Set(['ODP', 'DP', 'OPEN', 'ODG', 'WPI', 'WPII', 'WP-I', 'WP-II']);
