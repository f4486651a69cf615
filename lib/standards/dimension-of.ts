import { mmOfInches } from '@/lib/units/length';
import { DIMENSION_NAMES, type Dimension, type DimensionName } from './dimension';
import { citeOf, statusOf } from './table';

/** To a micrometre: hides the noise of the conversion, nothing of the figure. */
export const roundedMm = (mm: number): number => Math.round(mm * 1000) / 1000;
export const mmOfPrinted = (inches: number): number => roundedMm(mmOfInches(inches));

interface Known {
  mm: number;
  texts: 0 | 1 | 2;
  clause: string;
  plus?: number | null;
  minus?: number | null;
  alternatives?: readonly number[];
}

/** A dimension the standard fixes. */
export function standardDimension({
  mm,
  texts,
  clause,
  plus = null,
  minus = null,
  alternatives = [],
}: Known): Dimension {
  return {
    value: roundedMm(mm),
    plus: plus === null ? null : roundedMm(plus),
    minus: minus === null ? null : roundedMm(minus),
    alternatives,
    origin: 'standard',
    status: statusOf(texts),
    cite: citeOf(clause, texts),
  };
}

/** A dimension that nothing fixes; `why` says so where there is something to say. */
export function unknownDimension(why: string | null = null): Dimension {
  return { value: null, plus: null, minus: null, alternatives: [], origin: 'unknown', status: null, cite: why };
}

export function unknownDimensions(why: string | null = null): Record<DimensionName, Dimension> {
  const unknown = unknownDimension(why);
  return Object.fromEntries(DIMENSION_NAMES.map((name) => [name, unknown])) as Record<DimensionName, Dimension>;
}
