import { figure } from '@/lib/units/figure';

/** A figure with its unit, as a specification writes it; null stays null: nobody has told. */
export const quantity = (value: number | null | undefined, unit: string, digits = 1): string | null =>
  value === null || value === undefined ? null : `${figure(value, digits)} ${unit}`;

/** The greatest or the least of them; null where one is not known: it could be the one. */
export function ofAll(values: readonly (number | null)[], of: (...values: number[]) => number): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 || known.length < values.length ? null : of(...known);
}
