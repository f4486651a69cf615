import type { ChoiceOptions } from '@/lib/spares/hold/hold-options';
import type { CoverFilter } from './cover-filter';

/** What a person asks of the choice of motors to hold. Null: not told. */
export interface HoldAsked {
  sets: Pick<CoverFilter, 'q' | 'areaId' | 'criticality'> & { tags: readonly string[] };
  options: ChoiceOptions;
  /** What one motor to buy is taken to cost: so much for each, and so much for each kW. */
  price: { each: number | null; perKw: number | null };
  /** Days until a used motor is made good; null: the site's days of delivery. */
  days: number | null;
  /** Of published-rates. */
  rate: string;
  /** So many set-years the published rate counts as. */
  priorYears: number;
  /** The chance wanted that no set waits, from 0 to below 1. */
  chance: number;
  /** How long the solver may take. */
  seconds: number;
}
