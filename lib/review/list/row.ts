import type { ReviewFinding } from '../finding';

/** A finding and the set it was raised of, as a line of the site's list. */
export interface ReviewRow {
  setId: string;
  tag: string;
  service: string | null;
  areaId: string | null;
  area: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  /** Plant number of the motor in it. */
  motor: string;
  /** At duty, of rated power; null: not known. */
  loadPct: number | null;
  finding: ReviewFinding;
  /** A person lets it stand, for these figures, until a day that has not come. */
  isAccepted: boolean;
}
