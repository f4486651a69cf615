import { figuresOf } from '@/lib/units/figures-of';

/** What the review asks of every set, in the order it is asked. */
export const REVIEW_RULES = [
  'overloaded',
  'service-factor',
  'derated',
  'oversized',
  'speed',
  'drive-torque',
  'train-torque',
  'start',
  'supply',
  'currents',
  'protection',
  'drive-duty',
  'single-phase',
  'enclosure',
  'classification',
  'mount',
  'spare',
] as const;
export type ReviewRuleId = (typeof REVIEW_RULES)[number];

/**
 * When something is to be done about it, soonest first. `at-once`: it is beyond what a plate or a limit allows. `plan`: it
 * wears, or would fail where it is leaned on. `look`: a reading must tell first. `next-time`: when the motor is changed.
 */
export const URGENCIES = ['at-once', 'plan', 'look', 'next-time'] as const;
export type Urgency = (typeof URGENCIES)[number];

/** What the set costs in a year by this finding; or why that cannot be told. `not-energy`: it is nothing that has a price. */
export type YearlyCost =
  | { kind: 'known'; kwh: number; money: number; from: string }
  | { kind: 'unpriced'; kwh: number | null; why: string }
  | { kind: 'not-energy' };

/**
 * A set that does not suit its motor, by one rule. `have` is what the motor gives, `need` what the set asks; `difference`
 * = have − need in `unit`, null where either is no number.
 */
export interface ReviewFinding {
  rule: ReviewRuleId;
  urgency: Urgency;
  have: number | string | null;
  need: number | string | null;
  unit: string | null;
  difference: number | null;
  /** One or two sentences with the arithmetic. */
  says: string;
  cite: string;
  cost: YearlyCost;
  /** The reading that would tell more, with where and its minutes; null: none is missing. */
  reading: string | null;
  /** The values it rests on, always written alike: with others it is another finding. */
  figures: string;
}

/** What a rule tells of itself; the rest follows from it. */
export interface Raised extends Omit<ReviewFinding, 'difference' | 'cost' | 'reading' | 'figures'> {
  cost?: YearlyCost;
  reading?: string | null;
  /** What it rests on besides `have` and `need`. */
  figures: Readonly<Record<string, number | string | null>>;
}

/** A finding by what a rule tells. */
export function raised({ figures, cost, reading, have, need, ...rest }: Raised): ReviewFinding {
  const difference = typeof have === 'number' && typeof need === 'number' ? tidy(have - need) : null;
  return {
    ...rest,
    have: typeof have === 'number' ? tidy(have) : have,
    need: typeof need === 'number' ? tidy(need) : need,
    difference,
    cost: cost ?? NOT_ENERGY,
    reading: reading ?? null,
    figures: figuresOf({ urgency: rest.urgency, have, need, ...figures }),
  };
}

const NOT_ENERGY: YearlyCost = { kind: 'not-energy' };

/** Clears binary dust from converted and subtracted figures. */
const tidy = (value: number) => Math.round(value * 1e4) / 1e4;
